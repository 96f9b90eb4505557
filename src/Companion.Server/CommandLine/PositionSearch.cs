using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.AfterShow;
using Companion.Session.AfterShow;
using Companion.Session.Shows;

namespace Companion.Server.CommandLine;

/// <summary>Looks for positions to practise on, and says so while it takes long.</summary>
/// <param name="ladder">The rules.</param>
/// <param name="rule">The rule to practise.</param>
/// <param name="asked">How many positions were asked for; null for as many as there are, up to <see cref="UsualCount"/>.</param>
/// <param name="withMarks">Whether candidates are written; otherwise nothing may have to be known beyond the digits.</param>
/// <param name="streams">What the command is run with.</param>
internal sealed class PositionSearch(Ladder ladder, RuleId rule, int? asked, bool withMarks, InvocationConfiguration streams)
{
    /// <summary>How many positions a sheet has where nothing else is asked for: a page of them.</summary>
    public const int UsualCount = 6;

    private const string What = "Looking for positions";

    // Some minutes of work.
    private const int MostTries = 100_000;

    // After so many without a position the rule is rare.
    private const long Telling = 5_000;

    private int Count => asked ?? UsualCount;

    /// <summary>Looks in a file of puzzles; lines that are none are named on the error stream.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>The positions, and whether all lines that were read are puzzles.</returns>
    /// <exception cref="PlainException">There are not enough, or the file cannot be read.</exception>
    public (ImmutableArray<PracticePosition> Positions, bool AreAllGood) InFile(string name, CancellationToken cancel)
    {
        var file = new PositionsOfFile(name, ladder, rule);
        using var work = LongWork.Begin(streams, What, () => $"{file.Read} puzzles looked at");
        var chosen = PracticePosition.Choose(file.Puzzles(cancel).Select(its => its.Where(IsFit)), Count);
        foreach (var fault in file.Faults)
            streams.Error.WriteLine(fault);
        return (Enough(chosen, $"in the {file.Read} puzzles of the file", "name a file with more of them"), file.Faults.Count == 0);
    }

    /// <summary>Looks in a stored show: on the boards as they stood, and then on the way through its puzzles.</summary>
    /// <param name="show">The show.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="PlainException">There are not enough.</exception>
    public ImmutableArray<PracticePosition> InShow(StoredShow show, CancellationToken cancel)
    {
        var looked = new Tally();
        using var work = LongWork.Begin(streams, What, () => $"{looked.Value} puzzles of the show looked at");
        var chosen = PracticePosition.Choose(
            PracticeMoments.Of(show, ladder, rule, cancel).Select((its, index) =>
            {
                looked.Report(index + 1);
                return its.Select(each => each.Position with { Source = each.At is { } at ? $"at {VideoClock.Of(at)}" : "on the way through the puzzle" }).Where(IsFit);
            }),
            Count);
        return Enough(chosen, "in the show or on the way through its puzzles", "name another show or a file of puzzles");
    }

    /// <summary>Looks in puzzles that are made for it. The same seed gives the same positions.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="PlainException">There are not enough.</exception>
    public ImmutableArray<PracticePosition> InPuzzlesOfOurOwn(ulong seed, CancellationToken cancel)
    {
        var (tried, found) = (new Tally(), 0);
        using var work = LongWork.Begin(
            streams, What, () => SoFar(tried.Value, found, Count));
        var rules = ladder[rule].Rule.Effort == Effort.LastResort ? ladder.UpTo(rule) : ladder.WithoutLastResorts();
        var chosen = PracticePosition.Choose(
            PuzzleMaker.Make(new(rules, new(), [rule]), seed, Environment.ProcessorCount, tried, MostTries, cancel).Select(First), Count);
        return chosen.Length == Count
            ? chosen
            : throw TooFew(
                chosen.Length,
                string.Create(CultureInfo.InvariantCulture, $"in {MostTries:N0} puzzles made for it"),
                "name a file of puzzles that have it with --from, or leave out families of easier rules with --without-family");

        IEnumerable<PracticePosition> First(MadePuzzle made)
        {
            ImmutableArray<PracticePosition> first = [.. PracticePosition.Along(made.Puzzle.Board, ladder, rule, cancel).Take(1).Where(IsFit)];
            found += first.Length;
            return first;
        }
    }

    private bool IsFit(PracticePosition position) => withMarks || position.Gone.IsEmpty;

    /// <summary>How far a search in puzzles of our own has come, and what to do where it will take long.</summary>
    /// <param name="tried">How many puzzles were made.</param>
    /// <param name="found">How many positions were found.</param>
    /// <param name="wanted">How many are wanted.</param>
    internal static string SoFar(long tried, int found, int wanted)
    {
        var isRare = tried >= Telling && found * Telling < tried;
        return string.Create(CultureInfo.InvariantCulture, $"{tried:N0} puzzles made, {found} of {wanted} found")
            + (isRare ? "; the rule is rarely needed beside easier ones: leave out families of them with --without-family, or name a file of puzzles with --from" : "");
    }

    // Who asks for no number takes what there is.
    private ImmutableArray<PracticePosition> Enough(ImmutableArray<PracticePosition> found, string where, string wayOut) =>
        found.Length == Count || (asked is null && !found.IsEmpty) ? found : throw TooFew(found.Length, where, wayOut);

    private PlainException TooFew(int found, string where, string wayOut)
    {
        var these = found switch
        {
            0 => $"There is no such position {where}",
            1 => $"There is only 1 such position {where}, and {Count} are wanted",
            _ => $"There are only {found} such positions {where}, and {Count} are wanted",
        };
        var fewer = found == 0 ? "" : ", or ask for fewer with --count";
        return new($"{these}: {wayOut}{fewer}{(withMarks ? "" : ", or leave out --without-marks")}.");
    }
}
