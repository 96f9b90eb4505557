using System.Text;
using System.Text.Json;
using Companion.Engine.Proofs;
using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Server.Tests.Running;
using Companion.Server.Tests.Wire;
using Companion.Server.Wire;
using Companion.Session.State;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR.Protocol;

namespace Companion.Server.Tests.Live;

/// <summary>
/// Whatever is done in a session, the bytes that go out to pages on air and to viewers hold nothing of what the companion worked
/// out but what is on air.
/// </summary>
public sealed class LeakTests(CompanionFixture fixture) : IClassFixture<CompanionFixture>
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Nothing_goes_out_but_what_was_written_and_what_is_on_air(int seed)
    {
        var grades = new HashSet<Grade?>();
        foreach (var snapshot in SomeSessions.Snapshots(seed, steps: 80))
        {
            grades.Add(snapshot.State.OnAir?.Grade);
            var sent = BytesSent(snapshot);
            Assert.DoesNotContain(Secrets(snapshot), secret => sent.AsSpan().IndexOf(Encoding.UTF8.GetBytes(secret)) >= 0);
            OnlyWrittenDigitsAreShown(snapshot);
            OnlyShapesOfTheGradeAreShown(snapshot);
        }

        Assert.Contains(null, grades);
        Assert.True(grades.Count > 2, "This session puts too little on air to show anything.");
    }

    // By both protocols, one after the other.
    private byte[] BytesSent(Snapshot snapshot)
    {
        InvocationMessage[] pushes =
        [
            new("Overlay", [OverlayWire.Of(snapshot.State, "main", SomeSessions.Voice)]),
            new("Stage", [StageWire.Of(snapshot.State, SomeSessions.Voice)]),
            new("Board", [SomeSessions.AudienceAtOnce(snapshot.State)]),
        ];
        Assert.Equal(["json", "messagepack"], fixture.Companion.Protocols.Select(protocol => protocol.Name).Order());
        return [.. fixture.Companion.Protocols.SelectMany(protocol => pushes.SelectMany(push => protocol.GetMessageBytes(push).ToArray()))];
    }

    // As the text itself and as JSON escapes it.
    private IEnumerable<string> Secrets(Snapshot snapshot)
    {
        var state = snapshot.State;
        List<string> secrets = [state.Grid.Puzzle!.Solution.ToString()];
        secrets.AddRange(Enum.GetValues<AccessRole>().Select(role => fixture.Companion.Keys[role].Reveal()));
        foreach (var found in snapshot.Scan!.Open.Where(found => !found.Deduction.Equals(state.OnAir?.Deduction)))
            secrets.AddRange(Words(SomeSessions.Voice.Wording.HintsFor(snapshot.Scan.Known!, found.Deduction).Why));
        foreach (var step in PanelViews.Desk(state, snapshot.Scan, snapshot.Outlook, SomeSessions.Voice).Proof?.Steps ?? [])
            secrets.AddRange([step.Short, step.Sentence]);
        if (state.OnAir is { } cue)
        {
            var hints = SomeSessions.Voice.Wording.HintsFor(cue.Chosen.Board, cue.Deduction);
            secrets.AddRange(Enum.GetValues<Grade>().Where(grade => grade > cue.Grade).SelectMany(grade => Words(hints[grade])));
            secrets.RemoveAll(secret => Words(hints[cue.Grade]).Any(shown => shown.Contains(secret, StringComparison.Ordinal)));
        }

        secrets.AddRange(snapshot.Scan.Open.Select(found => found.Deduction.ToString()));
        secrets.AddRange(Forecast(snapshot).Where(deduction => !deduction.Equals(state.OnAir?.Deduction)).Select(deduction => deduction.ToString()));
        secrets.AddRange(PanelViews.Desk(state, snapshot.Scan, snapshot.Outlook, SomeSessions.Voice).Watch.Select(note => note.Text));
        secrets.AddRange(state.Cues.CallOuts.OfType<TextCallOut>().Select(callOut => callOut.Text));
        secrets.AddRange(state.Notes.Notes.Select(note => note.Text));
        return secrets.SelectMany(secret => new[] { secret, JsonEncodedText.Encode(secret).ToString() });
    }

    private static IEnumerable<Deduction> Forecast(Snapshot snapshot) => snapshot.Outlook!.Prospects
        .Select(prospect => prospect.Forecast).OfType<Engine.Planning.Forecast>()
        .SelectMany(forecast => forecast.NearMisses.Select(miss => miss.Deduction).Concat(forecast.Before)
            .Concat(forecast.First is { } first ? [first] : Array.Empty<Deduction>()));

    private static string[] Words(Hint hint) => [hint.Words.Spoken, hint.Words.Written];

    private static void OnlyWrittenDigitsAreShown(Snapshot snapshot)
    {
        var stage = JsonSerializer.SerializeToElement(StageWire.Of(snapshot.State, SomeSessions.Voice), WireJson.Options);
        var shown = stage.GetProperty("cells").EnumerateArray().Select(cell => cell.GetProperty("digit").ToString());
        Assert.Equal(Engine.CellSet.All.Select(cell => snapshot.State.Grid.DigitAt(cell).ToString()), shown);
    }

    private static void OnlyShapesOfTheGradeAreShown(Snapshot snapshot)
    {
        var overlay = JsonSerializer.SerializeToElement(OverlayWire.Of(snapshot.State, "main", SomeSessions.Voice), WireJson.Options);
        if (snapshot.State.OnAir is not { } cue)
        {
            Assert.Equal(JsonValueKind.Null, overlay.GetProperty("picture").ValueKind);
            return;
        }

        string[] allowed = cue.Grade switch
        {
            Grade.Where or Grade.What => ["house"],
            Grade.Which => ["house", "cell", "group", "link", "mark"],
            _ => ["house", "cell", "group", "link", "mark", "slash", "lozenge"],
        };
        var kinds = overlay.GetProperty("picture").GetProperty("shapes").EnumerateArray().Select(shape => shape.GetProperty("kind").GetString()!);
        Assert.Empty(kinds.Except(allowed));
    }
}
