using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Asks;

namespace Companion.Session.Tests.Asks;

public sealed class AskTextTests
{
    private static readonly AskText Reader = new("!");

    private static readonly Cell R4C7 = Cell.Parse("r4c7");

    public static TheoryData<string, Ask> Lines => new()
    {
        { "!hint", new AskHint(null, null) },
        { "  !HINT  ", new AskHint(null, null) },
        { "!hint 3", new AskHint(null, Grade.Which) },
        { "!hint r4c7", new AskHint(R4C7, null) },
        { "!hint R4C7 2", new AskHint(R4C7, Grade.What) },
        { "!hint 2 r4c7", new AskHint(R4C7, Grade.What) },
        { "!why r4c7", new AskWhy(R4C7) },
        { "!call r4c7 5", new AskCall(R4C7, Digit.Of(5)) },
        { "!left", new AskLeft() },
        { "!puzzle", new AskPuzzle() },
        { "!delay KITE", new AskDelay("kite") },

        // As other keyboards and clients send it.
        { "！ｈｉｎｔ　ｒ４ｃ７", new AskHint(R4C7, null) },
        { "!call r٤c٧ ٥", new AskCall(R4C7, Digit.Of(5)) },
        { "!hint\u00A0r4c7", new AskHint(R4C7, null) },
        { "!hint\u200B r4c7 \U000E0000", new AskHint(R4C7, null) },
        { "!hint 3\uFE0F\u20E3", new AskHint(null, Grade.Which) },
        { "!hint\u0007r4c7", new AskHint(R4C7, null) },

        { "!hint 5", new AskUnclear(AskWord.Hint) },
        { "!hint 0", new AskUnclear(AskWord.Hint) },
        { "!hint r4c7 r4c7", new AskUnclear(AskWord.Hint) },
        { "!hint 1 2", new AskUnclear(AskWord.Hint) },
        { "!hint r0c7", new AskUnclear(AskWord.Hint) },
        { "!why", new AskUnclear(AskWord.Why) },
        { "!why r4c7 now", new AskUnclear(AskWord.Why) },
        { "!call r4c7", new AskUnclear(AskWord.Call) },
        { "!call r4c7 10", new AskUnclear(AskWord.Call) },
        { "!left 5", new AskUnclear(AskWord.Left) },
        { "!delay", new AskUnclear(AskWord.Delay) },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_line_with_one_of_our_words_is_read(string line, Ask expected) => Assert.Equal(expected, Reader.Read(line));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("!")]
    [InlineData("hint")]
    [InlineData("! hint")]
    [InlineData("!hints")]
    [InlineData("!!hint")]
    [InlineData("try !hint")]
    [InlineData("!cake")]
    public void All_else_is_left_to_others(string? line) => Assert.Null(Reader.Read(line));

    [Fact]
    public void The_prefix_is_what_was_chosen()
    {
        Assert.Equal(new AskLeft(), new AskText("?>").Read("?>left"));
        Assert.Null(new AskText("?>").Read("!left"));
    }

    [Fact]
    public void A_line_of_500_characters_is_read_and_a_longer_one_is_not()
    {
        Assert.Equal(new AskLeft(), Reader.Read("!left" + new string(' ', AskText.Longest - 5)));
        Assert.Null(Reader.Read("!left" + new string(' ', AskText.Longest - 4)));
    }

    [Fact]
    public void No_line_throws_and_what_is_read_has_only_cells_digits_and_grades_that_there_are()
    {
        var random = new Random(20);
        for (var count = 0; count < 20_000; count++)
        {
            switch (Reader.Read(HostileLine.Of(random)))
            {
                case AskHint hint:
                    Assert.True(hint.UpTo is null || Enum.IsDefined(hint.UpTo.Value));
                    break;
                case AskDelay delay:
                    Assert.InRange(delay.Code.Length, 1, AskText.Longest);
                    break;
                default:
                    break;
            }
        }
    }

    // Linear in what matters: each character of a line becomes at most one character, whatever the line is made of.
    [Fact]
    public void Reading_makes_no_line_longer()
    {
        var random = new Random(21);
        for (var count = 0; count < 5_000; count++)
        {
            var code = HostileLine.Of(random).Replace(" ", "", StringComparison.Ordinal);
            if (Reader.Read("!delay " + code) is AskDelay read)
                Assert.True(read.Code.Length <= code.Length, code);
        }
    }
}
