using System.Text.RegularExpressions;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Asks;
using Companion.Session.Asks.Answers;
using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Session.Tests.Asks;

/// <summary>What holds of every answer, whatever is played and whatever is typed.</summary>
public sealed partial class AskPropertyTests
{
    private const int Delay = 15;

    private static readonly AskSettings Delayed = AskedShow.AtOnce with { DelaySeconds = Delay };

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    // Two shows that are the same up to a moment, and from then on are not: nobody can tell from the answers until the delay is over.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_answer_depends_on_what_viewers_have_not_seen(int seed)
    {
        var (one, other) = (Played(seed), Played(seed));
        var (differ, answers) = (false, 0);
        for (var second = 1; second < Delay; second++)
        {
            Play(one, seed * 31 + second, commands: 2);
            Play(other, seed * 37 + second, commands: 3);
            differ |= !one.Session.State.Grid.Equals(other.Session.State.Grid);
            one.Wait(1);
            other.Wait(1);
            var said = Asked(one, seed + second);
            Assert.Equal(said, Asked(other, seed + second));
            answers += said.Length;
        }

        Assert.True(differ && answers > 50, "These two shows show nothing.");
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_answer_gives_more_than_it_may(int seed)
    {
        var random = new Random(seed);
        var show = Played(seed);
        for (var round = 0; round < 60; round++)
        {
            Play(show, seed * 1000 + round, commands: 1);
            if (round % 20 == 19)
                show.Attribute();
            show.Wait(random.Next(6));
            var seen = show.Shown.FindLast(shown => shown.At <= show.Now.AddSeconds(-Delay)).State;
            var line = random.Next(3) == 0 ? HostileLine.Of(random) : SensibleLine(random);
            var said = show.Types($"viewer{(char)('a' + random.Next(6))}", line);
            if (said.Length > 0)
                Check(show.Answers[^1].Answered.Answer, seen, [.. said.Select(WithoutName)]);
        }

        Assert.True(show.Answers.Count > 15, "Too few answers to show anything.");
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_viewer_gets_a_grade_before_the_one_before_it_can_have_been_read(int seed)
    {
        var random = new Random(seed);
        var show = AskedShow.Of(seed % 2 == 0 ? Puzzles.Easy : Puzzles.Demo, new() { DelaySeconds = 0, ViewerPauseSeconds = 1 });
        for (var ask = 0; ask < 300; ask++)
        {
            show.Types($"viewer{random.Next(5)}", random.Next(3) == 0 ? $"!hint {random.Next(1, 5)}" : "!hint");
            show.Wait(random.NextDouble() * 2);
        }

        // Nothing is entered, so that all hints are about one deduction.
        var hints = show.Answers.Where(answer => answer.Answered.Answer is HintGiven).ToList();
        Assert.True(hints.Count > 10);
        foreach (var viewer in Enumerable.Range(0, 5).Select(number => AskedShow.IdOf($"viewer{number}")))
        {
            var highest = default((DateTimeOffset At, Hint Hint));
            foreach (var (at, answered) in hints.Where(answer => answer.Answered.Viewers.Contains(viewer)))
            {
                var hint = ((HintGiven)answered.Answer).Hint;
                if (highest.Hint is { } before && hint.Grade > before.Grade)
                    Assert.True(at - highest.At >= before.Words.TimeToSay(), $"{hint.Grade} came {at - highest.At} after {before.Grade}.");
                if (highest.Hint is null || hint.Grade > highest.Hint.Grade)
                    highest = (at, hint);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_line_is_longer_than_a_chat_takes_and_no_answer_longer_than_two_lines(int seed)
    {
        var show = Played(seed);
        for (var round = 0; round < 25; round++)
        {
            Play(show, seed * 500 + round, commands: 2);
            show.Wait(Delay);
            foreach (var grade in Enum.GetValues<Grade>())
            {
                var lines = show.Types(new string('ü', 24) + round, $"!hint {(int)grade}");
                Assert.InRange(lines.Length, 0, grade == Grade.Why ? 2 : 1);
                Assert.All(lines, line => Assert.InRange(System.Text.Encoding.UTF8.GetByteCount(line), 1, ChatLines.Octets));
            }
        }
    }

    private static void Check(Answer answer, SessionState seen, string[] said)
    {
        var text = string.Join(' ', said);
        switch (answer)
        {
            case HintGiven { Hint: WhereHint or WhatHint } hint:
                Assert.DoesNotMatch(AnyDigit(), HouseName().Replace(text, "", count: hint.Hint is WhereHint ? 1 : 0));
                break;
            case HintGiven { Hint: WhichHint which }:
                var shown = CellSet.Of([.. which.Cells.Select(part => part.Cell)]);
                Assert.All(CellName().Matches(text), name => Assert.True(shown.Contains(Cell.Parse(name.Value)), text));
                Assert.DoesNotContain("→", text, StringComparison.Ordinal);
                break;
            case HintGiven { Hint: WhyHint why } given:
                Assert.StartsWith(given.IsMissingStep ? "First" : why.Words.Written, text, StringComparison.Ordinal);
                break;
            case WhyFollows follows:
                Assert.Equal(
                    new(follows.Cell, seen.Grid.DigitAt(follows.Cell)!.Value), Assert.Single(follows.Hint.Deduction.Places));
                Assert.Equal(CandidateSet.Empty, follows.Hint.Deduction.Removes);
                break;
            case WhyGiven or WhyOpen or WhyUnknown or CellFilled or NothingOpen { Cell: not null }:
                Assert.DoesNotMatch(AnyDigit(), CellName().Replace(text, ""));
                break;
            case DigitsLeft left:
                Assert.Equal(Digit.All.Select(digit => Math.Max(0, 9 - seen.Grid.Digits[digit].Count)), left.Left);
                break;
            case PuzzleNamed named:
                Assert.Equal(seen.Grid.Credit, named.Credit);
                break;
            case HowToAsk or NothingOpen or NoFurther or AllGiven or TooSoon:
                break;
            default:
                Assert.Fail($"This should not have been said in the chat: {answer}");
                break;
        }
    }

    private static AskedShow Played(int seed)
    {
        var show = AskedShow.Of(seed % 2 == 0 ? Puzzles.Easy : Puzzles.Demo, Delayed);
        for (var second = 0; second < 20; second++)
        {
            Play(show, seed * 100 + second, commands: 1);
            show.Wait(1);
        }

        return show;
    }

    // What the presenter sets about viewers holds at once, and is left alone here.
    private static void Play(AskedShow show, int seed, int commands)
    {
        var player = new RandomSession(seed, show.Session);
        for (var count = 0; count < commands; count++)
        {
            if (player.Any() is var command and not (LimitAsks or SetDelay or EndShow))
                show.Try(command);
        }
    }

    private static string[] Asked(AskedShow show, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, 12).SelectMany(number => show.Types($"viewer{number % 5}", SensibleLine(random)))];
    }

    private static string SensibleLine(Random random)
    {
        var cell = Cell.At(random.Next(Cell.Count));
        return random.Next(8) switch
        {
            0 or 1 => "!hint",
            2 => $"!hint {random.Next(1, 5)}",
            3 => $"!hint {cell}",
            4 => $"!hint {cell} {random.Next(1, 5)}",
            5 => $"!why {cell}",
            6 => $"!call {cell} {random.Next(1, 10)}",
            _ => random.Next(2) == 0 ? "!left" : "!puzzle",
        };
    }

    private static string WithoutName(string line) => NameOf().Replace(line, "");

    [GeneratedRegex("^@viewer[a-f]: ")]
    private static partial Regex NameOf();

    [GeneratedRegex("[1-9]")]
    private static partial Regex AnyDigit();

    [GeneratedRegex("r[1-9]c[1-9]")]
    private static partial Regex CellName();

    [GeneratedRegex("(row|column|block) [1-9]")]
    private static partial Regex HouseName();
}
