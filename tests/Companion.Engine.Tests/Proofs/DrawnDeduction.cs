using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

/// <summary>
/// Reads deductions as <see cref="Deduction.ToString"/> writes them, with the absent candidates that they rest on after
/// <c>rests</c>: <c>r1c3=25</c> is both digits, <c>r1c3=-25</c> all but these, <c>b1=5</c> the digit in all cells of the house
/// that are not in the pattern, <c>b1-r2=5</c> the same but for the cells of the second house. After <c>supposes</c> comes a
/// candidate, then the singles that it leads to, each with its house if it has one (<c>r4:r4c4=5</c>) or another
/// supposition with slashes between (<c>r4c4=3/r4c7=6/r9c7=36</c>), and at last the cell or house that is left empty, with its digits.
/// </summary>
internal static class DrawnDeduction
{
    internal static Deduction Read(string text, bool assumesOneSolution = false)
    {
        var words = text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
        var cells = ImmutableArray.CreateBuilder<PatternCell>();
        var (houses, rests) = (HouseSet.Empty, new List<string>());
        var (sets, links, branch) = (new List<CellSet>(), new List<string>(), new List<string>());
        var (places, removes) = (CandidateSet.Empty, CandidateSet.Empty);
        var (role, part) = (default(Role), "");
        foreach (var word in words[2..])
        {
            if (word is "in" or "sets" or "places" or "removes" or "rests" or "links" or "supposes")
                part = word;
            else if (part == "supposes")
                branch.Add(word);
            else if (part == "sets")
                sets.Add(Cells(word));
            else if (part == "links")
                links.Add(word);
            else if (part == "in")
                houses = houses.With(House.Parse(word));
            else if (part == "places")
                places |= Candidates(word);
            else if (part == "removes")
                removes |= Candidates(word);
            else if (part == "rests")
                rests.Add(word);
            else if (Cell.TryParse(word, out var cell))
                cells.Add(new(cell, role));
            else
                role = Enum.Parse<Role>(word, ignoreCase: true);
        }

        var pattern = CellSet.Of([.. cells.Select(cell => cell.Cell)]);
        return new()
        {
            Rule = new(words[0]),
            Digits = DigitSet.Parse(words[1]),
            Cells = cells.ToImmutable(),
            Houses = houses,
            Sets = [.. sets],
            Links = Links(links),
            Branches = branch.Count > 0 ? [Branch(branch)] : [],
            Places = places,
            Removes = removes,
            AssumesOneSolution = assumesOneSolution,
            RestsOn = rests.Aggregate(CandidateSet.Empty, (all, word) => all | RestsOn(word, pattern)),
        };
    }

    /// <summary>The candidates of a text as in a deduction; in the cells of a house that are not in the pattern.</summary>
    internal static CandidateSet Candidates(string text, CellSet pattern) =>
        text.Split(' ').Aggregate(CandidateSet.Empty, (all, word) => all | RestsOn(word, pattern));

    private static ImmutableArray<Link> Links(List<string> words)
    {
        var links = ImmutableArray.CreateBuilder<Link>();
        for (var at = 1; at < words.Count; at += 2)
        {
            var (from, to) = (End(words[at - 1].TrimEnd(',')), End(words[at + 1].TrimEnd(',')));
            links.Add(new(new(from.Cells.First, from.Digit), new(to.Cells.First, to.Digit), words[at] == "=")
            {
                FromGroup = from.Cells.Count > 1 ? from.Cells : CellSet.Empty,
                ToGroup = to.Cells.Count > 1 ? to.Cells : CellSet.Empty,
            });
            if (words[at + 1].EndsWith(','))
                at++;
        }

        return links.ToImmutable();
    }

    private static Branch Branch(List<string> words)
    {
        var end = words[^1].Split('=');
        var isCell = Cell.TryParse(end[0], out var cell);
        return new(
            Candidate.Parse(words[0]),
            [.. words[1..^1].Select(Step)],
            new(isCell ? cell : null, isCell ? null : House.Parse(end[0]), DigitSet.Parse(end[1])));
    }

    private static Deduction Step(string word)
    {
        if (word.Contains('/', StringComparison.Ordinal))
            return StepOf(Branch([.. word.Split('/')]));
        var parts = word.Split(':');
        var placed = Candidate.Parse(parts[^1]);
        return new()
        {
            Rule = new(parts.Length > 1 ? "hidden-single" : "naked-single"),
            Digits = DigitSet.Of(placed.Digit),
            Cells = [new(placed.Cell, Role.Single)],
            Houses = parts.Length > 1 ? HouseSet.Of(House.Parse(parts[0])) : HouseSet.Empty,
            Places = CandidateSet.Of(placed),
        };
    }

    private static Deduction StepOf(Branch within) => new()
    {
        Rule = new("forcing-net"),
        Digits = DigitSet.Of(within.Supposed.Digit),
        Cells = [new(within.Supposed.Cell, Role.Start)],
        Removes = CandidateSet.Of(within.Supposed),
        Branches = [within],
    };

    private static (CellSet Cells, Digit Digit) End(string word) => (Cells(word[..word.IndexOf('=')]), Digit.Parse(word[^1..]));

    private static CellSet Cells(string word) => CellSet.Of([.. word.Split('+').Select(Cell.Parse)]);

    private static CandidateSet RestsOn(string word, CellSet pattern)
    {
        if (word.IndexOf('=', StringComparison.Ordinal) is var equals && equals == 4 && Cell.TryParse(word.AsSpan(0, 4), out _))
            return Candidates(word);
        var houses = word[..equals].Split('-').Select(House.Parse).ToList();
        var cells = houses.Skip(1).Aggregate(houses[0].Cells - pattern, (rest, house) => rest - house.Cells);
        return CandidateSet.Of(cells, DigitSet.Parse(word[(equals + 1)..]));
    }

    private static CandidateSet Candidates(string word) => word[5] == '-'
        ? CandidateSet.Of(CellSet.Of(Cell.Parse(word[..4])), ~DigitSet.Parse(word[6..]))
        : CandidateSet.Of(CellSet.Of(Cell.Parse(word[..4])), DigitSet.Parse(word[5..]));
}
