using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

public class SayingTests
{
    // At 150 words a minute: 20 words take 8 s (arithmetic). The range is the one that broadcast speakers use.
    [Theory]
    [InlineData(150, 8.0)]
    [InlineData(120, 10.0)]
    [InlineData(160, 7.5)]
    public void Twenty_words_take_their_share_of_a_minute(int wordsPerMinute, double seconds)
    {
        var saying = new Saying(string.Join(' ', Enumerable.Repeat("word", 20)), "");

        Assert.Equal(seconds, saying.TimeToSay(SpeakingRate.Of(wordsPerMinute)).TotalSeconds, 6);
    }

    [Theory]
    [InlineData("Row five column three.", 4)]
    [InlineData("There is an X-wing to be found.", 7)]
    [InlineData("Either way - and that is all - it goes.", 8)]
    [InlineData("", 0)]
    public void Words_are_counted_as_they_are_spoken(string spoken, int words) =>
        Assert.Equal(words, new Saying(spoken, "").WordCount);

    [Fact]
    public void A_speaker_says_150_words_a_minute_unless_told_otherwise()
    {
        Assert.Equal(150, default(SpeakingRate).WordsPerMinute);
        Assert.Equal(default, SpeakingRate.Of(150));
        Assert.Equal(new Saying("one two", "").TimeToSay(SpeakingRate.Of(150)), new Saying("one two", "").TimeToSay());
    }

    [Fact]
    public void A_rate_is_110_to_180_words_a_minute()
    {
        for (var rate = 110; rate <= 180; rate++)
            Assert.Equal(rate, SpeakingRate.Of(rate).WordsPerMinute);
        Assert.Throws<ArgumentOutOfRangeException>(() => SpeakingRate.Of(109));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpeakingRate.Of(181));
    }
}
