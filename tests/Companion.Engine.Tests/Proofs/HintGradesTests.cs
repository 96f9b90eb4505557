using System.Text.RegularExpressions;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Proofs;

/// <summary>A hint gives what its grade allows and nothing of the next.</summary>
public partial class HintGradesTests
{
    private static readonly Lazy<IReadOnlyList<(Board Board, Deduction Deduction, Hints Hints)>> _found = new(() =>
    [
        .. from board in TruePositions.Of(count: 60, seed: 7)
           from deduction in Ladder.Whole.Scan(board)
           select (board, deduction, ShippedPhrases.Wording.HintsFor(board, deduction)),
    ]);

    [Fact]
    public void The_types_of_the_lower_grades_cannot_carry_what_belongs_to_a_higher_one()
    {
        Assert.Equal(["Grade", "Region", "Saying"], MemberTypes<WhereHint>());
        Assert.Equal(["Grade", "Region", "RuleId", "Saying", "String"], MemberTypes<WhatHint>());
        Assert.DoesNotContain("Deduction", MemberTypes<WhichHint>());
    }

    [Fact]
    public void Each_grade_has_its_hint()
    {
        var (board, deduction) = OneOfEachRule.On("x-wing");
        var hints = ShippedPhrases.Wording.HintsFor(board, deduction);

        Assert.All(Enum.GetValues<Grade>(), grade => Assert.Equal(grade, hints[grade].Grade));
        Assert.Same(deduction, hints.Why.Deduction);
        Assert.Throws<ArgumentOutOfRangeException>(() => hints[(Grade)5]);
        Assert.Throws<ArgumentOutOfRangeException>(() => hints[0]);
    }

    [Fact]
    public void Where_says_a_region_and_no_digit_rule_or_cell() => ForEachFound((board, deduction, hints) =>
    {
        var region = hints.Where.Region;
        Assert.True(region.Cells.Overlaps(deduction.PatternCells));
        Assert.All(new[] { hints.Where.Words.Spoken, hints.Where.Words.Written }, text =>
        {
            var rest = HouseName().Replace(text, "", count: 1);
            Assert.DoesNotMatch(AnyDigit(), rest);
            Assert.DoesNotMatch(HouseName(), rest);
            Assert.DoesNotContain(hints.What.Name, rest, StringComparison.OrdinalIgnoreCase);
        });
    });

    [Fact]
    public void Where_never_names_a_house_in_which_only_the_pattern_is_open() => ForEachFound((board, deduction, hints) =>
    {
        if (hints.Where.Region.House is { } house)
            Assert.NotEqual(CellSet.Empty, (house.Cells & board.Open) - deduction.PatternCells);
    });

    [Fact]
    public void What_says_the_rule_and_no_digit_or_cell() => ForEachFound((_, deduction, hints) =>
    {
        Assert.Equal(deduction.Rule, hints.What.Rule);
        Assert.All(new[] { hints.What.Words.Spoken, hints.What.Words.Written }, text =>
        {
            Assert.Contains(hints.What.Name.Split(' ')[0], text, StringComparison.Ordinal);
            Assert.DoesNotMatch(AnyDigit(), text);
        });
    });

    [Fact]
    public void Which_shows_the_pattern_without_what_follows() => ForEachFound((_, deduction, hints) =>
    {
        var which = hints.Which;
        var concluded = deduction.Places | deduction.Removes;
        var shown = CellSet.Of([.. which.Cells.Select(cell => cell.Cell)]);
        if (deduction.Places.Count == 1 && deduction.Links.IsEmpty) // A single: its cell or its digit, never both.
            Assert.True((CandidateSet.Of(shown, which.Digits) & concluded).IsEmpty);
        Assert.True((which.Candidates & concluded).IsEmpty);
        Assert.All(which.Links, link => Assert.False(concluded.Contains(link.From) || concluded.Contains(link.To)));

        var caption = which.Words.Written;
        Assert.All(CellName().Matches(caption), name => Assert.True(shown.Contains(Cell.Parse(name.Value)), caption));
        var digits = AnyDigit().Matches(HouseNames().Replace(CellName().Replace(caption, ""), ""));
        Assert.All(digits, digit => Assert.True(which.Digits.Contains(Digit.Parse(digit.Value)), caption));
        var conclusion = ShippedPhrases.Wording.Conclusion(deduction);
        Assert.DoesNotContain(Clause(conclusion.Spoken), which.Words.Spoken, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(conclusion.Written, caption, StringComparison.Ordinal);
    });

    [Fact]
    public void Which_shows_the_houses_to_which_a_fish_or_a_locked_digit_is_kept() => ForEachFound((_, deduction, hints) =>
    {
        var cover = hints.Which.Cover;
        if (deduction.Cells[0].Role is not (Role.Base or Role.Locked))
        {
            Assert.Equal(HouseSet.Empty, cover);
            return;
        }

        var covered = CellSet.Of([.. cover.SelectMany(house => house.Cells)]);
        Assert.Equal(deduction.Houses.Count, cover.Count);
        Assert.Single(cover.Select(house => house.Kind).Distinct());
        Assert.True((cover & deduction.Houses).IsEmpty);
        var fins = CellSet.Of([.. deduction.Cells.Where(part => part.Role == Role.Fin).Select(part => part.Cell)]);
        Assert.True(covered.ContainsAll((deduction.PatternCells - fins) | deduction.Removes.Cells));
    });

    [Fact]
    public void Why_says_all_that_follows() => ForEachFound((_, deduction, hints) =>
    {
        var conclusion = ShippedPhrases.Wording.Conclusion(deduction);
        Assert.Contains(Clause(conclusion.Spoken), hints.Why.Words.Spoken, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(conclusion.Written, hints.Why.Words.Written, StringComparison.Ordinal);
    });

    [Fact]
    public void Every_sentence_is_whole() => ForEachFound((_, _, hints) =>
        Assert.All(Enum.GetValues<Grade>().Select(grade => hints[grade].Words), words =>
        {
            Assert.Matches(@"^[A-Z].*[.?]$", words.Spoken);
            Assert.Matches(@"^[A-Z].*[^.?]$", words.Written);
            Assert.DoesNotMatch(@"[{}]|  | [.,;:?]|[.,;:?]{2}|[0-9]", words.Spoken);
            Assert.DoesNotMatch(@"[{}]|  | [.,;:?]|[.,;:?]{2}", words.Written);
        }));

    private static void ForEachFound(Action<Board, Deduction, Hints> check)
    {
        foreach (var (board, deduction, hints) in _found.Value)
            check(board, deduction, hints);
    }

    private static string[] MemberTypes<THint>() =>
        [.. typeof(THint).GetProperties().Select(member => member.PropertyType.Name).Distinct().Order(StringComparer.Ordinal)];

    private static string Clause(string sentence) => sentence.TrimEnd('.');

    [GeneratedRegex("[1-9]|\\b(one|two|three|four|five|six|seven|eight|nine)\\b", RegexOptions.IgnoreCase)]
    private static partial Regex AnyDigit();

    [GeneratedRegex(
        "(row|column|block) ([1-9]|one|two|three|four|five|six|seven|eight|nine)|(top|middle|bottom|left|right) (band|stack)")]
    private static partial Regex HouseName();

    [GeneratedRegex("(row|column|block)s? [1-9](, [1-9])*( and [1-9])?")]
    private static partial Regex HouseNames();

    [GeneratedRegex("r[1-9]c[1-9]")]
    private static partial Regex CellName();
}
