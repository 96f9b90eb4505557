using System.Collections.Immutable;
using System.Reflection;
using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Live.Desk;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Live;

/// <summary>Who may call what at the desk, and what comes of calls that make no sense.</summary>
public sealed class DeskMethodTests(CompanionFixture fixture) : IClassFixture<CompanionFixture>
{
    private const string OnlyPresenter = "Only the presenter may do this: ask the presenter.";
    private const string NotAllowed = "Co-hosts may not put anything on air now: ask the presenter to allow it.";

    private static readonly object Frame = new { left = 0.1, top = 0.1, width = 0.5, height = 0.5 };

    /// <summary>When co-hosts may call a method.</summary>
    private enum CoHosts
    {
        Never,
        WhenAllowedOnAir,
        Always,
    }

    // Every method with arguments that make sense, and when co-hosts may call it.
    private static readonly ImmutableArray<(string Name, object?[] Arguments, CoHosts May)> Methods =
    [
        ("LoadPuzzle", [Grids.EssayOne, "", "", ""], CoHosts.Never),
        ("PlaceDigit", ["r1c3", 1], CoHosts.Never),
        ("EraseCells", [new[] { "r1c3" }], CoHosts.Never),
        ("ToggleBlockMark", [new[] { "r1c3", "r2c2" }, 2], CoHosts.Never),
        ("ToggleCellMark", [new[] { "r1c3" }, 2], CoHosts.Never),
        ("ToggleStrike", [new[] { "r1c3" }, 9], CoHosts.Never),
        ("SettleMarks", [], CoHosts.Never),
        ("Undo", [], CoHosts.Never),
        ("Redo", [], CoHosts.Never),
        ("ClearGrid", [], CoHosts.Never),
        ("AllowCoHostOnAir", [true], CoHosts.Never),
        ("Why", ["r1c3", 1], CoHosts.Never),
        ("LimitAsks", [true, 3, false], CoHosts.Never),
        ("SetDelay", [12], CoHosts.Never),
        ("UseMeasuredDelay", [], CoHosts.Never),
        ("ShowDelayCode", [], CoHosts.Never),
        ("HideDelayCode", [], CoHosts.Never),
        ("SetAudienceDoor", ["open"], CoHosts.Never),
        ("AudienceLink", [], CoHosts.Never),
        ("EndShow", [], CoHosts.Never),
        ("BeginShow", ["Second evening"], CoHosts.Never),
        ("ReopenShow", [1], CoHosts.Never),
        ("StartRecording", [], CoHosts.Never),
        ("PauseRecording", [], CoHosts.Never),
        ("ResumeRecording", [], CoHosts.Never),
        ("StopRecording", [], CoHosts.Never),
        ("Shows", [], CoHosts.Never),
        ("Chapters", [1], CoHosts.Never),
        ("SaveChapters", [1, new[] { new { at = 0, title = "Introduction" } }], CoHosts.Never),
        ("SetOffset", [1, 1.5], CoHosts.Never),
        ("WriteChapters", [1, "list", "25"], CoHosts.Never),
        ("ExportShow", [1], CoHosts.Never),
        ("StopLadder", ["xy-wing"], CoHosts.Never),
        ("SwitchFamily", ["uniqueness", false], CoHosts.Never),
        ("FeatureRules", [new[] { new { rule = "xy-wing", isEarly = true } }], CoHosts.Never),
        ("Vet", [Grids.EssayOne, new[] { "xy-wing" }], CoHosts.Never),
        ("FollowScreen", ["a page", true], CoHosts.Never),
        ("StopFollowing", ["a page"], CoHosts.Never),
        ("ReadAs", ["r1c3", 4], CoHosts.Never),
        ("AcceptReading", ["r1c3"], CoHosts.Never),
        ("LoadFromScreen", [], CoHosts.Never),
        ("TakeScreen", [], CoHosts.Never),
        ("StandBy", ["an id"], CoHosts.WhenAllowedOnAir),
        ("StandByCalls", [], CoHosts.WhenAllowedOnAir),
        ("StandDown", [], CoHosts.WhenAllowedOnAir),
        ("NextGrade", [], CoHosts.WhenAllowedOnAir),
        ("PreviousGrade", [], CoHosts.WhenAllowedOnAir),
        ("ClearAir", [], CoHosts.WhenAllowedOnAir),
        ("MarkUsed", ["an id"], CoHosts.WhenAllowedOnAir),
        ("PlaceFrame", ["main", Frame], CoHosts.WhenAllowedOnAir),
        ("ShowFrame", ["main"], CoHosts.WhenAllowedOnAir),
        ("ForgetScene", ["main"], CoHosts.WhenAllowedOnAir),
        ("CueDeduction", ["an id", 2], CoHosts.Always),
        ("NoteStep", ["r4c2=5", "", "Slowly"], CoHosts.Always),
        ("CueText", ["Thanks"], CoHosts.Always),
        ("RewordCue", [1, 1, "Thanks"], CoHosts.Always),
        ("RegradeCue", [1, 1, 2], CoHosts.Always),
        ("MoveCue", [1, null], CoHosts.Always),
        ("TurnCue", [1, 1, "go"], CoHosts.Always),
        ("TakeCue", [1, 1], CoHosts.WhenAllowedOnAir),
        ("RemoveCue", [1, 1], CoHosts.Always),
        ("SweepCues", [], CoHosts.Always),
    ];

    [Fact]
    public void The_table_the_hub_and_the_pages_name_the_same_methods()
    {
        var table = Methods.Select(method => method.Name).Order().ToList();
        var hub = typeof(DeskHub).GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(method => method.GetBaseDefinition().DeclaringType == typeof(DeskHub)).Select(method => method.Name).Order();
        var pages = WireFile.MembersOf("DeskMethods").Order();

        Assert.Equal(table, hub);
        Assert.Equal(table, pages);
    }

    [Fact]
    public async Task A_co_host_is_refused_all_but_the_cue_list_until_the_presenter_allows_what_belongs_on_air()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);

        var before = companion.Session.State;
        foreach (var (name, arguments, may) in Methods.Where(method => method.Arguments is not ["an id", ..] && method.May != CoHosts.Always))
            Assert.Equal((name, may == CoHosts.Never ? OnlyPresenter : NotAllowed), (name, (await coHost.Ask(name, arguments)).Refusal));
        Assert.Same(before, companion.Session.State);
        await AskAll(coHost, OnlyPresenter, method => method.May == CoHosts.Never);

        await presenter.Do("AllowCoHostOnAir", true);
        await AskAll(coHost, OnlyPresenter, method => method.May == CoHosts.Never);
        await AskAll(coHost, NotAllowed, _ => false);

        await presenter.Do("AllowCoHostOnAir", false);
        Assert.Equal(NotAllowed, (await coHost.Ask("TakeCue", 1, 1)).Refusal);
        Assert.NotEqual(NotAllowed, (await coHost.Ask("TurnCue", 1, 1, "go")).Refusal);
    }

    [Fact]
    public async Task The_presenter_is_refused_nothing_for_who_asks()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();

        foreach (var (name, arguments, _) in Methods)
        {
            var refusal = (await presenter.Ask(name, arguments)).Refusal;
            Assert.False(refusal is OnlyPresenter or NotAllowed, name);
        }
    }

    public static TheoryData<string, string, string> Nonsense => new()
    {
        { "PlaceDigit", """["r0c5", 1]""", "'r0c5' is not a cell such as r4c7." },
        { "PlaceDigit", """[null, 1]""", "'' is not a cell such as r4c7." },
        { "PlaceDigit", """["r1c3", 0]""", "0 is not a digit from 1 to 9." },
        { "PlaceDigit", """["r1c3", 10]""", "10 is not a digit from 1 to 9." },
        { "EraseCells", """[["r1c3", "somewhere"]]""", "'somewhere' is not a cell such as r4c7." },
        { "EraseCells", """[["r1c3", null]]""", "'' is not a cell such as r4c7." },
        { "ToggleBlockMark", """[["r1c3"], -1]""", "-1 is not a digit from 1 to 9." },
        { "Why", """["r0c5", 1]""", "'r0c5' is not a cell such as r4c7." },
        { "Why", """["r1c3", 0]""", "0 is not a digit from 1 to 9." },
        { "StandBy", """["no-such-deduction"]""", "This deduction is not open any more: choose one of the list." },
        { "MarkUsed", """[null]""", "This deduction is not open any more: choose one of the list." },
        { "CueDeduction", """["no-such-deduction", 2]""", "This deduction is not open any more: choose one of the list." },
        { "RegradeCue", """[1, 1, 5]""", "5 is not a grade from 1 to 4." },
        { "TurnCue", """[1, 1, "over"]""", "'over' is no stage of a cue: listed, standBy, go or done." },
        { "CueText", """[null]""", "A talking point has words: write some." },
        { "TakeCue", """[7, 1]""", "Somebody took this off the cue list just now: look again." },
        { "LimitAsks", "[true, 5, false]", "Hints have the grades 1 to 4: choose one of them." },
        { "SetDelay", "[61]", "A delay is 0 to 60 seconds: choose one in between." },
        { "SetDelay", "[-1]", "A delay is 0 to 60 seconds: choose one in between." },
        { "UseMeasuredDelay", "[]", "No delay was measured yet: show a code and have viewers write it." },
        { "StopLadder", """["xyz"]""", "No rule of the ladder is called 'xyz': choose one of the list." },
        { "SwitchFamily", """[null, true]""", "No family of rules is called '': choose one of the list." },
        { "FeatureRules", """[[{ "rule": "xyz", "isEarly": true }]]""", "No rule of the ladder is called 'xyz': choose one of the list." },
        { "FeatureRules", """[[null]]""", "No rule of the ladder is called '': choose one of the list." },
        { "FeatureRules", """[[{ "rule": "xy-wing" }, { "rule": "xy-wing" }]]""", "Each rule is featured once: leave out the second one." },
        { "NoteStep", """[null, null, "Slowly"]""", "A note belongs to a step that places or takes out something: choose one of the run sheet." },
        { "Vet", """["", ["xyz"]]""", "No rule of the ladder is called 'xyz': choose one of the list." },
        { "FollowScreen", """["", true]""", "A page is known by a word of at most 64 characters." },
        { "ReadAs", """["r1c3", 11]""", "11 is not a digit from 1 to 9." },
        { "ReadAs", """["r0c3", 1]""", "'r0c3' is not a cell such as r4c7." },
        { "AcceptReading", """["r1c3"]""", "No screen is followed now: begin with Follow my screen." },
        { "LoadFromScreen", "[]", "No screen is followed now: begin with Follow my screen." },
        { "TakeScreen", "[]", "No screen is followed now: begin with Follow my screen." },
        { "PlaceFrame", """["main", null]""", "A frame has left, top, width and height." },
    };

    [Theory]
    [MemberData(nameof(Nonsense))]
    public async Task Arguments_that_make_no_sense_are_refused_in_one_plain_sentence(string method, string arguments, string sentence)
    {
        await using var presenter = await fixture.Companion.OpenDesk();
        await presenter.Sees("Next", _ => true);
        var before = fixture.Companion.Session.State.Sequence;

        var reply = await presenter.Ask(method, Read(arguments));

        Assert.Equal(sentence, reply.Refusal);
        Assert.Equal(before, reply.Sequence);
    }

    [Theory]
    [InlineData("LoadPuzzle", "[null, null, null, null]")]
    [InlineData("ToggleCellMark", "[null, 5]")]
    [InlineData("PlaceFrame", "[null, null]")]
    [InlineData("PlaceFrame", """["main", {}]""")]
    [InlineData("ForgetScene", "[null]")]
    [InlineData("ShowFrame", """["no such scene"]""")]
    public async Task Arguments_that_are_missing_are_refused_as_well(string method, string arguments)
    {
        await using var presenter = await fixture.Companion.OpenDesk();

        Assert.Matches(@"^\w.*\.$", (await presenter.Ask(method, Read(arguments))).Refusal);
    }

    [Theory]
    [InlineData("PlaceDigit", "r1c3")]
    [InlineData("PlaceDigit", "r1c3", "one")]
    [InlineData("NoSuchMethod")]
    public async Task A_call_that_no_page_makes_fails_without_a_word_about_the_inside_and_the_next_one_works(
        string method, params object?[] arguments)
    {
        await using var presenter = await fixture.Companion.OpenDesk();

        var error = await Assert.ThrowsAsync<Microsoft.AspNetCore.SignalR.HubException>(() => presenter.Ask(method, arguments));
        Assert.DoesNotContain("System.", error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(" at ", error.Message, StringComparison.Ordinal);
        await presenter.Do("StandDown");
    }

    // Whatever else is refused for its contents, this refusal comes to these methods and to no others.
    private static async Task AskAll(
        OpenPage page, string refusal, Func<(string Name, object?[] Arguments, CoHosts May), bool> isRefused)
    {
        foreach (var method in Methods)
            Assert.Equal((method.Name, isRefused(method)), (method.Name, (await page.Ask(method.Name, method.Arguments)).Refusal == refusal));
    }

    private static object?[] Read(string arguments) => [.. JsonSerializer.Deserialize<JsonElement?[]>(arguments)!];
}
