using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Server.CommandLine;

/// <summary>Looks for positions to practise on, and says so while it takes long.</summary>
/// <param name="ladder">The rules.</param>
/// <param name="rule">The rule to practise.</param>
/// <param name="count">How many positions.</param>
/// <param name="withMarks">Whether candidates are written; otherwise nothing may have to be known beyond the digits.</param>
/// <param name="streams">What the command is run with.</param>
internal sealed class PositionSearch(Ladder ladder, RuleId rule, int count, bool withMarks, InvocationConfiguration streams)
{
    private const string What = "Looking for positions";

    // Some minutes of work.
    private const int MostTries = 100_000;

    /// <summary>Looks in a file of puzzles; lines that are none are named on the error stream.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>The positions, and whether all lines that were read are puzzles.</returns>
    /// <exception cref="PlainException">There are not enough, or the file cannot be read.</exception>
    public (ImmutableArray<PracticePosition> Positions, bool AreAllGood) InFile(string name, CancellationToken cancel)
    {
        var file = new PositionsOfFile(name, ladder, rule);
        using var work = LongWork.Begin(streams, What, () => $"{file.Read} puzzles looked at");
        var chosen = PracticePosition.Choose(file.Puzzles(cancel).Select(its => its.Where(IsFit)), count);
        foreach (var fault in file.Faults)
            streams.Error.WriteLine(fault);
        return chosen.Length == count
            ? (chosen, file.Faults.Count == 0)
            : throw TooFew(chosen.Length, $"the {file.Read} puzzles of the file: name one with more");
    }

    /// <summary>Looks in puzzles that are made for it. The same seed gives the same positions.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="PlainException">There are not enough.</exception>
    public ImmutableArray<PracticePosition> InPuzzlesOfOurOwn(ulong seed, CancellationToken cancel)
    {
        var (tried, found) = (new Tally(), 0);
        using var work = LongWork.Begin(
            streams, What, () => string.Create(CultureInfo.InvariantCulture, $"{tried.Value:N0} puzzles made, {found} of {count} found"));
        var rules = ladder[rule].Rule.Effort == Effort.LastResort ? ladder.UpTo(rule) : ladder.WithoutLastResorts();
        var chosen = PracticePosition.Choose(
            PuzzleMaker.Make(new(rules, new(), [rule]), seed, Environment.ProcessorCount, tried, MostTries, cancel).Select(First), count);
        return chosen.Length == count
            ? chosen
            : throw TooFew(chosen.Length, string.Create(CultureInfo.InvariantCulture, $"{MostTries:N0} puzzles made: name a file of puzzles with --from"));

        IEnumerable<PracticePosition> First(MadePuzzle made)
        {
            ImmutableArray<PracticePosition> first = [.. PracticePosition.Along(made.Puzzle.Board, ladder, rule, cancel).Take(1).Where(IsFit)];
            found += first.Length;
            return first;
        }
    }

    private bool IsFit(PracticePosition position) => withMarks || position.Gone.IsEmpty;

    private PlainException TooFew(int found, string where)
    {
        var these = found == 0 ? "There is no such position" : $"There {(found == 1 ? "is" : "are")} {found} such and not {count}";
        return new($"{these} in {where}, or ask for fewer with --count{(withMarks ? "" : ", or leave out --without-marks")}.");
    }
}
