using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Events;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Server.Tests.AfterShow;

/// <summary>Shows of chance in which things were put on air, called out, mistaken and mended.</summary>
internal static class AiredShow
{
    /// <summary>Words that would break any format that does not escape them.</summary>
    public const string Hostile = "</p><script>alert(1)</script> --> {b} & ]]> `*_# \"quoted\"";

    /// <summary>A show of chance.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="title">The title of its puzzle.</param>
    public static StoredShow Of(int seed, string title = "Lanterns")
    {
        var made = MadeShow.Of(seed, recorded: false);
        var (events, cue) = (new List<Event>(), 0);
        foreach (var happened in made.Events)
        {
            var at = happened.At;
            events.Add(happened is PuzzleLoaded loaded ? loaded with { Title = title, Setter = "A. Setter", Link = "https://example.org/lanterns" } : happened);
            if (happened is not DeductionUsed used)
                continue;
            events.Add(new PutOnAir(at, used.Deduction, Grade.Which));
            events.Add(new PutOnAir(at.AddSeconds(1), used.Deduction, Grade.Why));
            events.Add(new AirCleared(at.AddSeconds(2)));
            events.Add(new TextCued(at, ++cue, $"{Hostile} {cue}"));
            events.Add(new CueTurned(at.AddSeconds(2), cue, CueStage.Done));
        }

        return StoredShow.Replay(events.OrderBy(happened => happened.At));
    }

    /// <summary>A show with a wrong digit, which is taken out half a minute later.</summary>
    public static StoredShow WithSlip(out Candidate wrong)
    {
        var loaded = (PuzzleLoaded)MadeShow.Of(1, recorded: false).Events[0];
        var solution = Puzzle.Parse(loaded.Grid).Solution;
        var cell = Puzzle.Parse(loaded.Grid).Board.Open.First;
        wrong = new(cell, Digit.All.First(digit => digit != solution[cell]));
        return StoredShow.Replay(
        [
            loaded,
            new DigitPlaced(loaded.At.AddSeconds(10), wrong.Cell, wrong.Digit),
            new CellsErased(loaded.At.AddSeconds(40), CellSet.Of(wrong.Cell)),
            new DigitPlaced(loaded.At.AddSeconds(50), wrong.Cell, solution[cell]),
        ]);
    }
}
