using System.Text.Json;
using System.Text.Json.Nodes;
using Companion.Drawing.Pictures;
using Companion.Engine.Proofs;
using Companion.Server.Access;
using Companion.Server.Chat;
using Companion.Server.Live.Replay;
using Companion.Server.Planning;
using Companion.Server.Shows;
using Companion.Server.Tests.Running;
using Companion.Server.Wire;
using Companion.Session.Asks;
using Companion.Session.Asks.Calls;
using Companion.Session.Asks.Delays;
using Companion.Session.Audience;
using Companion.Session.State;
using Companion.Session.Views;
using MessagePack;

namespace Companion.Server.Tests.Wire;

public sealed class WireShapeTests
{
    public static TheoryData<Type, string> Pairs => new()
    {
        { typeof(DeskWire), "DeskView" },
        { typeof(NextView), "NextView" },
        { typeof(ForecastView), "ForecastView" },
        { typeof(ForecastView.Line), "ForecastLine" },
        { typeof(ForecastView.Miss), "NearMiss" },
        { typeof(LadderView), "LadderView" },
        { typeof(RungView), "Rung" },
        { typeof(FamilyView), "Family" },
        { typeof(OverlayWire), "OverlayView" },
        { typeof(StageWire), "StageView" },
        { typeof(CueWire), "Cue" },
        { typeof(OpenDeduction), "OpenDeduction" },
        { typeof(DeskCell), "DeskCell" },
        { typeof(StageCell), "StageCell" },
        { typeof(WatchNote), "WatchNote" },
        { typeof(EntryProof), "EntryProof" },
        { typeof(ProofStep), "ProofStep" },
        { typeof(WhyView), "WhyView" },
        { typeof(FeaturedRule), "FeaturedRule" },
        { typeof(VettedWire), "VettedView" },
        { typeof(RunSheetWire), "RunSheetView" },
        { typeof(RunSheet), "RunSheet" },
        { typeof(RunSheet.PassageLine), "PassageLine" },
        { typeof(RunSheet.StepLine), "StepLine" },
        { typeof(RunSheet.FeaturedLine), "FeaturedLine" },
        { typeof(RunSheet.OtherLine), "OtherLine" },
        { typeof(RunSheet.PointLine), "PointLine" },
        { typeof(PointFacts), "PointFacts" },
        { typeof(VetResult), "VetResult" },
        { typeof(VetResult.RuleUse), "RuleUse" },
        { typeof(VetResult.FeaturedRule), "RuleNeed" },
        { typeof(VetResult.Correction), "Correction" },
        { typeof(GradeFigures), "GradeFigures" },
        { typeof(SceneView), "Scene" },
        { typeof(ScreenWire), "ScreenView" },
        { typeof(HeldWire), "HeldReading" },
        { typeof(GridWire), "FoundGrid" },
        { typeof(ViewersView), "ViewersView" },
        { typeof(AskLimits), "AskLimits" },
        { typeof(Delay), "Delay" },
        { typeof(CellCalls), "CellCalls" },
        { typeof(Frame), "Frame" },
        { typeof(Credit), "Credit" },
        { typeof(Picture), "Picture" },
        { typeof(Engine.Candidate), "CandidateName" },
        { typeof(Reply), "Reply" },
        { typeof(ChatStatus), "ChatStatus" },
        { typeof(CuesView), "CuesView" },
        { typeof(CallOutView), "CallOut" },
        { typeof(CuedDeduction), "CuedDeduction" },
        { typeof(AudienceView), "AudienceView" },
        { typeof(DoorView), "DoorView" },
        { typeof(CalledWire), "Called" },
        { typeof(RecordingWire), "Recording" },
        { typeof(ShowsWire), "ShowsView" },
        { typeof(ShowLine), "ShowLine" },
        { typeof(ChaptersWire), "ChaptersView" },
        { typeof(ChaptersWire.Mark), "ChapterMark" },
        { typeof(SavedFile), "SavedFile" },
        { typeof(OpenedReplay), "OpenedReplay" },
        { typeof(Timeline), "Timeline" },
        { typeof(Timeline.Mark), "TimelineMark" },
        { typeof(AudienceBoard), "AudienceBoard" },
        { typeof(AudienceAnswer), "AudienceAnswer" },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void The_pages_expect_the_members_that_are_sent_and_no_others(Type sent, string expected)
    {
        var members = WireJson.Options.GetTypeInfo(sent).Properties.Select(member => member.Name);

        Assert.Equal(WireFile.MembersOf(expected).Order(), members.Order());
    }

    [Fact]
    public void Both_protocols_carry_the_same_maps_with_the_same_names()
    {
        foreach (var snapshot in SomeSessions.Snapshots(seed: 1, steps: 40))
        {
            object[] views =
            [
                DeskWire.Of(snapshot, AccessRole.CoHost, SomeSessions.Voice),
                OverlayWire.Of(snapshot.State, "main", SomeSessions.Voice),
                StageWire.Of(snapshot.State, SomeSessions.Voice),
                SomeSessions.AudienceAtOnce(snapshot.State),
                PanelViews.Next(snapshot.Scan!, SomeSessions.Voice),
                ForecastView.Of(snapshot.Outlook!, SomeSessions.Voice),
                CueViews.Of(snapshot.State, SomeSessions.Voice),
                LadderView.Of(snapshot.State, Engine.Rules.Ladder.Whole, SomeSessions.Voice),
                new WhyView(Engine.Cell.Parse("r4c7"), Engine.Digit.Of(5), "Why.", [new("naked single", "short", "Sentence.")]),
            ];
            foreach (var view in views)
            {
                var json = JsonSerializer.Serialize(view, view.GetType(), WireJson.Options);
                var bytes = MessagePackSerializer.Serialize(view.GetType(), view, WireMessagePack.Options, TestContext.Current.CancellationToken);
                var unpacked = MessagePackSerializer.ConvertToJson(bytes, cancellationToken: TestContext.Current.CancellationToken);

                Assert.True(JsonNode.DeepEquals(JsonNode.Parse(json), JsonNode.Parse(unpacked)), $"{json}\n{unpacked}");
            }
        }
    }

    [Fact]
    public void Cells_are_names_digits_are_numbers_sets_are_arrays_and_nothing_is_null()
    {
        var cell = new DeskCell(
            Engine.Digit.Of(5), false, null, Engine.DigitSet.Parse("27"), Engine.DigitSet.Empty, Engine.DigitSet.All);
        Assert.Equal(
            """{"digit":5,"isGiven":false,"cellMark":null,"blockMarks":[2,7],"struck":[],"candidates":[1,2,3,4,5,6,7,8,9]}""",
            JsonSerializer.Serialize(cell, WireJson.Options));

        var note = new WatchNote(WatchKind.FreeDigit, "Look.", [Engine.Cell.Parse("r4c7")], DateTimeOffset.UnixEpoch, 3);
        Assert.Equal(
            """{"kind":"freeDigit","text":"Look.","cells":["r4c7"],"since":"1970-01-01T00:00:00+00:00","entries":3}""",
            JsonSerializer.Serialize(note, WireJson.Options));

        Assert.Equal(
            """{"cell":"r4c7","role":"pivot"}""",
            JsonSerializer.Serialize(new PatternCell(Engine.Cell.Parse("r4c7"), Role.Pivot), WireJson.Options));
        Assert.Equal(
            """{"id":2,"version":1,"stage":"standBy","text":"Thanks","seconds":0.4,"deduction":null}""",
            JsonSerializer.Serialize(new CallOutView(2, 1, CueStage.StandBy, "Thanks", 0.4, null), WireJson.Options));
        Assert.Equal("[3,\"coHost\"]", JsonSerializer.Serialize(new object[] { Grade.Which, AccessRole.CoHost }, WireJson.Options));
        Assert.Equal(
            """[{"kind":"slash","x":0.5,"y":1.25,"digit":9}]""",
            JsonSerializer.Serialize<Shape[]>([new SlashShape(0.5, 1.25, 9)], WireJson.Options));
    }
}
