namespace Companion.Engine.Proofs;

/// <summary>One thing to say, in its two forms.</summary>
/// <param name="Spoken">Whole sentences to say aloud, digits and cells as words: <c>row five column three</c>.</param>
/// <param name="Written">A caption, digits and cells in short: <c>r5c3</c>. No full stop at its end.</param>
public sealed record Saying(string Spoken, string Written)
{
    /// <summary>How many words the spoken form has. <c>X-wing</c> is one word; <c>row five column three</c> is four.</summary>
    public int WordCount => Spoken.Split(' ').Count(word => word.Any(char.IsLetterOrDigit));

    /// <summary>How long it takes to say: 20 words at 150 words a minute are 8 seconds.</summary>
    /// <param name="rate">How fast the presenter speaks; 150 words a minute by default.</param>
    public TimeSpan TimeToSay(SpeakingRate rate = default) => TimeSpan.FromMinutes(WordCount / (double)rate.WordsPerMinute);
}
