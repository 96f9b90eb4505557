using Companion.Engine;

namespace Companion.Sight.Tests.Reading;

/// <summary>A board of which 45 cells may have marks, the others big digits, with made readings.</summary>
public sealed class BoardContextTests
{
    private const int Here = 12;

    private readonly ContextBoard _board = new();

    [Fact]
    public void A_digit_is_not_proposed_twice_in_a_cell()
    {
        _board.Put(Here, ContextBoard.Sure(1), ContextBoard.Sure(7), ContextBoard.Guess(0.7f, (1, 0.6f), (9, 0.3f)));

        Expect("179", _board.Read()[Here]);
    }

    [Theory]
    [InlineData("1267", "1347")]
    [InlineData("7162", "1647")]
    public void A_mark_is_proposed_in_order_where_others_are(string others, string expected)
    {
        Fill(others);
        _board.Put(Here, ContextBoard.Sure(1), ContextBoard.Guess(0.5f, (6, 0.6f), (3, 0.3f)), ContextBoard.Sure(4), ContextBoard.Sure(7));

        Expect(expected, _board.Read()[Here]);
    }

    [Theory]
    [InlineData("1267", true)]
    [InlineData("7162", false)]
    public void What_is_sure_and_out_of_order_is_held_back_as_it_was_read(string others, bool isHeld)
    {
        Fill(others);
        _board.Put(Here, "1647");

        var read = _board.Read()[Here];

        Assert.Equal([1, 6, 4, 7], read.Select(reading => reading.Digit!.Value.Value));
        Assert.Equal(isHeld, read.Any(reading => reading.Certainty < CellReading.Sure));
        Assert.Equal([0.98f, 0.98f], [read[0].Certainty, read[3].Certainty]);
    }

    // The last row has a 5 in the column of the cell; the marks of the others are digits of their columns, too, or none of them.
    [Theory]
    [InlineData("2346", "8")]
    [InlineData("2345", "5")]
    public void A_mark_is_proposed_that_no_big_digit_of_a_house_is_where_others_are_none(string others, string expected)
    {
        for (var column = 0; column < 9; column++)
            _board.Put(72 + column, "5");
        Fill(others);
        _board.Put(Here, ContextBoard.Guess(0.5f, (5, 0.6f), (8, 0.3f)));

        Expect(expected, _board.Read()[Here]);
    }

    [Theory]
    [InlineData(0.1f, 9)]
    [InlineData(0.98f, 4)]
    public void An_unsure_big_digit_is_proposed_to_be_another_than_those_of_its_houses(float certainty, int expected)
    {
        _board.Put(72, "4");
        _board.Put(75, ContextBoard.Guess(certainty, (4, 0.55f), (9, 0.45f)));

        var reading = Assert.Single(_board.Read()[75]);

        Assert.Equal(expected, reading.Digit!.Value.Value);
        Assert.Equal(certainty, reading.Certainty);
    }

    [Fact]
    public void Big_digits_that_agree_are_left_as_they_were_read()
    {
        _board.Put(72, "5");
        _board.Put(75, ContextBoard.Guess(0.1f, (4, 0.55f), (9, 0.45f)));

        Assert.Equal(4, _board.Read()[75][0].Digit!.Value.Value);
    }

    [Fact]
    public void What_the_presenter_taught_is_not_proposed_otherwise()
    {
        _board.Put(Here, new GlyphReading(Digit.Of(3), 0.95f), ContextBoard.Guess(0.5f, (3, 0.6f), (2, 0.1f)), new GlyphReading(Digit.Of(3), 0.8f));

        Expect("323", _board.Read()[Here]);
    }

    [Theory]
    [InlineData(-0.2f, "1257")]
    [InlineData(-0.8f, "12-7")]
    public void What_is_as_high_as_marks_and_hardly_rather_nothing_is_proposed_for_one(float certainty, string expected)
    {
        Fill("1267");
        _board.Put(Here, ContextBoard.Sure(1), ContextBoard.Sure(2), ContextBoard.Guess(certainty, (2, 0.25f), (5, 0.2f)), ContextBoard.Sure(7));

        Expect(expected, _board.Read()[Here]);
    }

    // Readings without any sense: however much is proposed, nothing is surer than it looks, and what is sure is what it looks like.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Context_makes_nothing_sure_and_changes_nothing_that_is(int seed)
    {
        var random = new Random(seed);
        var before = new GlyphReading[Cell.Count][];
        // On some of the boards most marks ascend, on some most are no big digit's.
        for (var cell = 0; cell < Cell.Count; cell++)
        {
            var digits = Enumerable.Range(1, seed % 2 == 0 ? 4 : 9).OrderBy(_ => random.Next()).Take(cell < ContextBoard.Marked ? 4 : 1);
            before[cell] = [.. (random.Next(4) > 0 ? digits.Order() : digits).Select(digit => Reading(random, digit))];
            _board.Put(cell, before[cell]);
        }

        var after = _board.Read();

        var changed = 0;
        for (var cell = 0; cell < Cell.Count; cell++)
        {
            foreach (var (was, now) in before[cell].Zip(after[cell]))
            {
                Assert.True(now.Certainty <= Math.Max(was.Certainty, was.Digit is null ? was.Odds.Max() : 0));
                if (was.Certainty >= CellReading.Sure || now.Certainty >= CellReading.Sure)
                    Assert.Equal(was.Digit, now.Digit);
                changed += was.Digit != now.Digit ? 1 : 0;
            }

            if (before[cell].Any(was => was.Certainty < CellReading.Sure))
                Assert.Contains(after[cell], now => now.Certainty < CellReading.Sure);
        }

        Assert.InRange(changed, 5, 200);
    }

    private static GlyphReading Reading(Random random, int digit) => random.Next(10) switch
    {
        0 => ContextBoard.Guess(-0.3f, (digit, 0.3f), (1 + digit % 9, 0.2f)),
        1 or 2 => ContextBoard.Guess(0.2f + 0.6f * random.NextSingle(), (1 + (digit + random.Next(8)) % 9, 0.5f), (digit, 0.3f)),
        _ => ContextBoard.Sure(digit),
    };

    private void Fill(string marks)
    {
        for (var cell = 0; cell < ContextBoard.Marked; cell++)
            _board.Put(cell, marks);
    }

    // Whatever is proposed is held back.
    private static void Expect(string digits, IReadOnlyList<GlyphReading> read)
    {
        Assert.Equal(digits, string.Concat(read.Select(reading => reading.Digit?.ToString() ?? "-")));
        Assert.Contains(read, reading => reading.Certainty < CellReading.Sure);
    }
}
