using System.Collections.Immutable;
using System.Globalization;
using Companion.Drawing.Paper;
using Companion.Engine.Planning.Talking;
using Companion.Engine.Proofs;
using Companion.Server.Planning;
using Companion.Session.AfterShow.Recaps;

namespace Companion.Server.AfterShow;

/// <summary>The sentences of a recap; every writer has the same.</summary>
/// <param name="Recap">The recap.</param>
/// <param name="Wording">The words of deductions and the names of rules.</param>
/// <param name="Rarity">How often remarks are true.</param>
internal sealed record RecapWords(Recap Recap, Wording Wording, Rarity Rarity)
{
    private const int MostRemarks = 8;
    private const int MostTimes = 12;

    /// <summary>The title.</summary>
    public string Title => Recap.Title.Length > 0 ? $"Recap: {Recap.Title}" : "Recap of a show";

    /// <summary>How long it was and how many puzzles it had.</summary>
    public string Summary => $"{VideoClock.Of(Recap.Length)} long, {Count(Recap.Puzzles.Length, "puzzle")}, {Count(Recap.Chapters.Length, "chapter")}.";

    /// <summary>Where the time went: a line for each thing that was worked on, with its share, the longest first; the rest in one line.</summary>
    public ImmutableArray<string> Times
    {
        get
        {
            var all = Recap.Topics.GroupBy(each => ChapterTitle.Of(each.Topic, Wording))
                .Select(same => (Title: same.Key, First: same.First().At, Minutes: same.Sum(each => each.Length.TotalMinutes)))
                .OrderByDescending(each => each.Minutes).ToList();
            var rest = all.Skip(MostTimes).ToList();
            return
            [
                .. all.Take(MostTimes).Select(each =>
                    string.Create(CultureInfo.InvariantCulture, $"{VideoClock.Of(each.First)} {each.Title}: {each.Minutes:F1} min")),
                .. rest.Count == 0
                    ? Array.Empty<string>()
                    : [string.Create(CultureInfo.InvariantCulture, $"{Count(rest.Count, "other thing")}: {rest.Sum(each => each.Minutes):F1} min")],
            ];
        }
    }

    /// <summary>What a puzzle is called.</summary>
    public static string TitleOf(RecapPuzzle puzzle) => puzzle.Credit.Title.Length > 0 ? puzzle.Credit.Title : "The puzzle";

    /// <summary>Whom it is owed to; empty where that is not known.</summary>
    public static string CreditOf(RecapPuzzle puzzle) =>
        string.Join(", ", new[] { puzzle.Credit.Setter.Length > 0 ? $"set by {puzzle.Credit.Setter}" : "", puzzle.Credit.Link }.Where(part => part.Length > 0));

    /// <summary>How hard it is and how it went.</summary>
    public string CourseOf(RecapPuzzle puzzle)
    {
        var grade = GradeFigures.Of(puzzle.Grade);
        var hardest = puzzle.Grade.Hardest is { } rung ? $", hardest rule {Wording.NameOf(rung.Rule.Id)}" : "";
        var end = puzzle.SolvedAt is { } at ? $"solved at {VideoClock.Of(at)}" : "not finished";
        var called = puzzle.CalledFirst > 0 && puzzle.FoundFirst.IsEmpty ? $" {Count(puzzle.CalledFirst, "cell")} had been called by viewers on air before the digit was entered." : "";
        return $"Grade: {grade.Word}{hardest}. Begun at {VideoClock.Of(puzzle.From)}, {end}, after {Count(puzzle.Entries, "entry", "entries")}.{called}";
    }

    /// <summary>Remarks that came true, the rarest first, and which digit was finished first.</summary>
    public ImmutableArray<string> RemarksOf(RecapPuzzle puzzle) =>
    [
        .. Rarity.Rank(puzzle.TrueRemarks.Where(IsOfAStep)).Take(MostRemarks).Select(point =>
            $"{VideoClock.Of(puzzle.ToldAt[point.Step!.Value])} {TextOf(point, puzzle)}"),
        .. puzzle.FirstDigit is { } first ? new[] { $"{VideoClock.Of(first.At)} The first digit to be finished was {first.Digit}." } : [],
    ];

    /// <summary>What viewers found first.</summary>
    public static ImmutableArray<string> FoundFirstOf(RecapPuzzle puzzle) =>
    [
        .. puzzle.FoundFirst.Select(each =>
            $"{VideoClock.Of(each.At)} {each.Found.Cell}: {(each.Found.AtLeast == 1 ? "a viewer" : $"{each.Found.AtLeast} viewers or more")} had found it before.")
    ];

    /// <summary>What was overlooked, and for how long.</summary>
    public ImmutableArray<string> OverlookedOf(RecapPuzzle puzzle) =>
    [
        .. puzzle.Overlooked.Select(each =>
        {
            var words = Wording.HintsFor(each.Board, each.Deduction).Why.Words.Written;
            var fate = each.WasTaken ? "then taken" : "and never taken";
            return $"{words}: open from {VideoClock.Of(each.From)} for {VideoClock.Of(each.To - each.From)} and {Count(each.Entries, "entry", "entries")}, "
                + $"{fate}, while {Wording.OneOf(each.Harder)} was being worked on.";
        }),
    ];

    /// <summary>Mistakes and their mending, for the presenter alone.</summary>
    public static ImmutableArray<string> SlipsOf(RecapPuzzle puzzle) =>
    [
        .. puzzle.Slips.Select(slip =>
        {
            var what = slip.IsStrike ? $"{slip.Candidate.Digit} struck in {slip.Candidate.Cell}" : $"{slip.Candidate.Digit} in {slip.Candidate.Cell}";
            var end = slip.MendedAt is { } mended ? $"mended after {VideoClock.Of(mended - slip.At)}" : "never mended";
            return $"{VideoClock.Of(slip.At)} {what}: {end}.";
        }),
    ];

    /// <summary>The talking points that were said.</summary>
    public ImmutableArray<string> Said => [.. Recap.Said.Select(each => $"{VideoClock.Of(each.At)} {each.Text}")];

    /// <summary>The steps that are shown: what was on air, and then what else was featured; each list with its title.</summary>
    public ImmutableArray<(string Title, ImmutableArray<RecapStep> Steps)> StepsOf(RecapPuzzle puzzle) =>
    [
        .. new (string Title, ImmutableArray<int> Places)[]
        {
            ("Put on air", puzzle.OnAir),
            (puzzle.OnAir.IsEmpty ? "Steps of the show" : "Featured, not on air", puzzle.Featured),
        }.Where(list => !list.Places.IsEmpty).Select(list => (list.Title, list.Places.Select(place => StepOf(puzzle, place)).ToImmutableArray())),
    ];

    private RecapStep StepOf(RecapPuzzle puzzle, int place)
    {
        var step = puzzle.Told.Steps[place];
        return new(
            VideoClock.Of(puzzle.ToldAt[place]),
            $"{Sentence(Wording.NameOf(step.Deduction.Rule))}. {Wording.ToRead(step.Deduction)}",
            Figure.Of(step.Board, Wording.HintsFor(step.Board, step.Deduction).Why, withMarks: false));
    }

    private static string Sentence(string text) => string.Concat(char.ToUpperInvariant(text[0]), text[1..]);

    // Of a show only some steps were told: what counts all steps of a route is not true of it, and the digit that was finished first is
    // what was seen to be.
    private static bool IsOfAStep(TalkingPoint point) => point is { Step: not null } and not TalkingPoint.FirstDigit;

    private string TextOf(TalkingPoint point, RecapPuzzle puzzle) =>
        point is TalkingPoint.OneInTheWay one ? TextOf(one, puzzle) : PointText.Of(point, Wording, Rarity);

    // A show has times where a route has steps, and entries between what is told: what is known is how the boards of the steps told were.
    private string TextOf(TalkingPoint.OneInTheWay one, RecapPuzzle puzzle)
    {
        var (first, last) = (VideoClock.Of(puzzle.ToldAt[one.Earlier]), VideoClock.Of(puzzle.ToldAt[one.At - 1]));
        var (before, rule) = (puzzle.Told.Steps[one.At - 1], Wording.NameOf(puzzle.Told.Steps[one.At].Deduction.Rule));
        var when = (before.Deduction.Removes.Contains(one.InTheWay), first == last) switch
        {
            (true, _) => $"Until {last}, when the {Wording.NameOf(before.Deduction.Rule)} took it away,",
            (_, true) => $"At {last}",
            _ => $"From {first} to {last}",
        };
        return $"{when} only {one.InTheWay.Digit} in {one.InTheWay.Cell} was in the way of the {rule}.";
    }

    private static string Count(int number, string one, string? several = null) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {(number == 1 ? one : several ?? one + "s")}");
}
