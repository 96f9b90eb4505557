namespace Companion.Engine.Proofs;

/// <summary>
/// Says digits, cells, houses and lists of them, aloud (<c>row five column three</c>) or short (<c>r5c3</c>): in captions, or in the
/// sentences that are spoken.
/// </summary>
internal sealed class Names(Phrases phrases, bool spoken, bool inShort = false)
{
    private bool IsAloud => spoken && !inShort;

    internal Filling Digits(DigitSet digits) => List([.. digits.Select(digit => Number(digit.Value))]);

    /// <summary>The cells in this order, aloud gathered by row or column: <c>row one columns two and five</c>.</summary>
    internal Filling Cells(IReadOnlyCollection<Cell> cells) => new(cells.Count, joint =>
    {
        if (!spoken)
            return string.Join(phrases.Word("lists.comma"), cells);
        if (inShort)
            return Join([.. cells.Select(cell => cell.ToString())], joint);
        var byRow = cells.GroupBy(cell => cell.Row).ToList();
        var byColumn = cells.GroupBy(cell => cell.Column).ToList();
        var gathered = byRow.Count <= byColumn.Count
            ? byRow.ConvertAll(row => InLine([.. row], "cells.in-row", joint))
            : byColumn.ConvertAll(column => InLine([.. column], "cells.in-column", joint));
        return Join(gathered, joint, clear: gathered.Count < cells.Count);
    });

    /// <summary>The stops of a way in this order, each in full: a cell, or the cells of a group together.</summary>
    internal Filling Way(IReadOnlyCollection<CellSet> stops) =>
        spoken ? List([.. stops.Select(stop => Cells([.. stop]).Text(Joint.Or))]) : Together(stops);

    /// <summary>The sets in this order, each with all its cells.</summary>
    internal Filling Sets(IReadOnlyCollection<CellSet> sets) => spoken
        ? new(sets.Count, joint => Join([.. sets.Select(set => Cells([.. set]).Text(Joint.And))], joint, clear: true))
        : Together(sets);

    /// <summary>
    /// What follows from what along the links: <c>if row one column two is not five, then it is seven, so row one column six is not
    /// seven, so ...</c> A link that does not go on from the one before it starts a sentence of its own.
    /// </summary>
    internal Filling Chain(IReadOnlyList<Link> links) =>
        Filling.One(string.Join(phrases.Word("chains.next"), Runs(links).Select(run => phrases["chains.whole"].Fill(
            new Dictionary<string, Filling>
            {
                ["start"] = Filling.One(Fact("chains.", run[0].From, run[0].FromGroup, holds: !run[0].IsStrong)),
                ["steps"] = Filling.One(string.Join(phrases.Word("chains.so"), run.Select(Step))),
            }))));

    /// <summary>What follows from what is supposed, step by step: see <see cref="NetNames"/>.</summary>
    internal Filling Net(IReadOnlyList<Branch> branches) => Filling.One(new NetNames(phrases, this).All(branches));

    /// <summary>The cells where their house was just named: <c>columns two and five</c> after <c>in row one</c>.</summary>
    internal Filling CellsWithin(HouseSet houses, IReadOnlyCollection<Cell> cells)
    {
        if (!IsAloud || houses.Count != 1 || !houses.First.IsLine)
            return Cells(cells);
        return Houses(houses.First.Kind == HouseKind.Row
            ? HouseSet.Of([.. cells.Select(cell => House.Column(cell.Column))])
            : HouseSet.Of([.. cells.Select(cell => House.Row(cell.Row))]));
    }

    /// <summary>The houses, gathered by kind: <c>rows two and seven</c>, <c>row one and block one</c>.</summary>
    internal Filling Houses(HouseSet houses) => new(houses.Count, joint =>
    {
        var kinds = houses.GroupBy(house => house.Kind);
        return Join([.. kinds.Select(kind => OfKind(kind.Key, [.. kind.Select(house => house.Number)], joint))], joint);
    });

    /// <summary>What houses of one kind are called: <c>row</c> or <c>rows</c>; nothing where there are no houses.</summary>
    internal Filling Noun(HouseSet houses, bool one) =>
        Filling.One(houses.IsEmpty ? "" : phrases.Word(PhraseNames.NounOf(houses.First.Kind, one)));

    internal string Region(Region region)
    {
        if (region.House is { } house)
            return Houses(HouseSet.Of(house)).Text(Joint.And);
        var chute = region.Chute!.Value;
        return phrases.Word($"{(chute.IsBand ? "bands" : "stacks")}.{chute.Number}");
    }

    /// <summary>What is placed, removed or gone: <c>five and eight come out of row one column five</c>.</summary>
    /// <param name="phrase">The last part of the name of the phrase.</param>
    /// <param name="candidates">The candidates; not empty.</param>
    internal string Statement(string phrase, in CandidateSet candidates)
    {
        var template = phrases[$"conclusions.{phrase}.{(spoken ? "spoken" : "written")}"];
        var statements = CandidateGroup.Gather(candidates).ConvertAll(group => template.Fill(new Dictionary<string, Filling>
        {
            ["digits"] = Digits(group.Digits),
            ["cells"] = Cells(group.Cells),
        }));
        return Clauses(statements);
    }

    /// <summary>What follows from a deduction: what it places and removes.</summary>
    internal string Conclusion(Deduction deduction)
    {
        var statements = new List<string>();
        if (!deduction.Places.IsEmpty)
            statements.Add(Statement("places", deduction.Places));
        if (!deduction.Removes.IsEmpty)
            statements.Add(Statement("removes", deduction.Removes));
        return Clauses(statements);
    }

    /// <summary>Statements in one sentence or caption.</summary>
    internal string Clauses(List<string> statements) =>
        spoken ? Join(statements, Joint.And, clear: true) : string.Join(phrases.Word("lists.semicolon"), statements);

    private static List<List<Link>> Runs(IReadOnlyList<Link> links)
    {
        var runs = new List<List<Link>>();
        foreach (var link in links)
        {
            if (runs.Count == 0 || !link.GoesOnFrom(runs[^1][^1]))
                runs.Add([]);
            runs[^1].Add(link);
        }

        return runs;
    }

    private string Step(Link link)
    {
        var staysInCell = link.From.Cell == link.To.Cell && (link.FromGroup | link.ToGroup).IsEmpty;
        return Fact(staysInCell ? "chains.it-" : "chains.", link.To, link.ToGroup, link.IsStrong);
    }

    private string Fact(string prefix, Candidate candidate, CellSet group, bool holds) =>
        phrases[prefix + (group.IsEmpty ? "" : "group-") + (holds ? "is" : "is-not")].Fill(new Dictionary<string, Filling>
        {
            ["digits"] = Digits(DigitSet.Of(candidate.Digit)),
            ["cells"] = Cells([.. group.With(candidate.Cell)]),
        });

    /// <summary>A number of things; aloud in words where it is one of the digits.</summary>
    internal string Count(int number) => number <= Digit.Count ? Number(number) : number.ToString();

    private string Number(int number) => IsAloud ? phrases.Word($"digits.{number}") : number.ToString();

    private Filling List(List<string> items) => new(items.Count, joint => Join(items, joint));

    private Filling Together(IReadOnlyCollection<CellSet> parts)
    {
        var items = parts.Select(part => string.Join(phrases.Word("lists.together"), part)).ToList();
        return new(items.Count, _ => string.Join(phrases.Word("lists.comma"), items));
    }

    private string InLine(List<Cell> cells, string phrase, Joint joint) => phrases[cells.Count == 1 ? "cells.one" : phrase].Fill(
        new Dictionary<string, Filling>
        {
            ["row"] = Filling.One(Number(cells[0].Row)),
            ["column"] = Filling.One(Number(cells[0].Column)),
            ["rows"] = Filling.One(Join(cells.ConvertAll(cell => Number(cell.Row)), joint)),
            ["columns"] = Filling.One(Join(cells.ConvertAll(cell => Number(cell.Column)), joint)),
        });

    private string OfKind(HouseKind kind, List<int> numbers, Joint joint) =>
        phrases[numbers.Count == 1 ? "houses.one" : "houses.several"].Fill(new Dictionary<string, Filling>
        {
            ["kind"] = Filling.One(phrases.Word(PhraseNames.NounOf(kind, one: true))),
            ["kinds"] = Filling.One(phrases.Word(PhraseNames.NounOf(kind, one: false))),
            ["number"] = Filling.One(Number(numbers[0])),
            ["numbers"] = Filling.One(Join(numbers.ConvertAll(Number), joint)),
        });

    // Clear: the members hold "and" themselves, so that even two need a comma between.
    private string Join(List<string> items, Joint joint, bool clear = false)
    {
        if (items.Count <= 1)
            return string.Concat(items);
        var last = phrases.Word((joint, clear) switch
        {
            (Joint.And, false) => "lists.and",
            (Joint.And, true) => "lists.comma-and",
            (_, false) => "lists.or",
            (_, true) => "lists.comma-or",
        });
        return string.Join(phrases.Word("lists.comma"), items.SkipLast(1)) + last + items[^1];
    }
}
