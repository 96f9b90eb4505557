using Companion.Sight.Reading;

namespace Companion.Sight.Tests.Reading;

/// <summary>What two networks say of a sign, put together.</summary>
public sealed class SignReadingTests
{
    [Fact]
    public void Where_both_agree_it_is_sure() => Expect(7, isSure: true, Around((7, 0.98f)).With(ContextBoard.Sure(7)));

    [Fact]
    public void Where_they_do_not_it_is_unsure_and_what_the_surer_one_says()
    {
        Expect(7, isSure: false, Around((1, 0.9f)).With(ContextBoard.Sure(7)));
        Expect(1, isSure: false, Around((1, 0.99f)).With(ContextBoard.Guess(0.3f, (7, 0.6f), (1, 0.3f))));
    }

    [Fact]
    public void What_is_no_digit_to_one_alone_is_proposed_and_unsure() =>
        Expect(6, isSure: false, Around((6, 0.97f)).With(ContextBoard.Guess(-0.6f, (6, 0.2f))));

    [Fact]
    public void What_is_covered_is_unsure() => Expect(7, isSure: false, (Around((7, 0.98f)) with { Cover = 0.5f }).With(ContextBoard.Sure(7)));

    [Fact]
    public void What_made_the_first_reading_less_sure_still_does() =>
        Expect(7, isSure: false, Around((7, 0.98f)).With(ContextBoard.Sure(7) with { Certainty = 0.8f }));

    [Fact]
    public void What_was_taught_stays() => Expect(7, isSure: true, Around((1, 0.99f)).With(new(Engine.Digit.Of(7), 0.95f)));

    [Fact]
    public void Nobody_was_asked() => Expect(7, isSure: true, default(SignReading).With(ContextBoard.Sure(7)));

    private static SignReading Around(params (int Digit, float Odds)[] odds) => new(ContextBoard.Guess(1, odds).Odds, 0, 0);

    private static void Expect(int digit, bool isSure, GlyphReading reading) =>
        Assert.Equal((digit, isSure), (reading.Digit!.Value.Value, reading.Certainty >= CellReading.Sure));
}
