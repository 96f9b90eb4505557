namespace Companion.Engine.Proofs;

/// <summary>
/// How fast somebody speaks, 110 to 180 words a minute. The default value is 150. Radio authors recommend 160 to 180
/// (E. Rodero, 2012, as its abstract has it).
/// </summary>
public readonly record struct SpeakingRate
{
    /// <summary>The slowest rate: 110 words a minute.</summary>
    public const int Slowest = 110;

    /// <summary>The rate unless another is set: 150 words a minute.</summary>
    public const int Usual = 150;

    /// <summary>The fastest rate: 180 words a minute.</summary>
    public const int Fastest = 180;

    // Stored as the difference from the usual rate, so that default is a valid rate: -40 to 30.
    private readonly sbyte _aboveUsual;

    private SpeakingRate(int wordsPerMinute) => _aboveUsual = (sbyte)(wordsPerMinute - Usual);

    /// <summary>Words a minute, 110 to 180.</summary>
    public int WordsPerMinute => Usual + _aboveUsual;

    /// <summary>The rate of this many words a minute.</summary>
    /// <param name="wordsPerMinute">110 to 180.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="wordsPerMinute"/> is not 110 to 180.</exception>
    public static SpeakingRate Of(int wordsPerMinute)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(wordsPerMinute, Slowest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(wordsPerMinute, Fastest);
        return new(wordsPerMinute);
    }

    /// <summary>The rate in words, such as <c>150 words a minute</c>.</summary>
    public override string ToString() => $"{WordsPerMinute} words a minute";
}
