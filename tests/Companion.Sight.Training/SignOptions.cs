using System.Globalization;

namespace Companion.Sight.Training;

/// <summary>How to train the network that reads signs among what stands around them.</summary>
/// <param name="Boards">How many boards to paint, in tens.</param>
/// <param name="Rounds">How often to go through the signs of them.</param>
/// <param name="Seed">The lot.</param>
/// <param name="Threads">How many threads to use; the result does not depend on it.</param>
/// <param name="Tests">How many boards to test with, in tens; as many are painted to tune with.</param>
internal sealed record SignOptions(int Boards = 18_000, int Rounds = 4, int Seed = 1, int Threads = 2, int Tests = 300)
{
    // The images of their signs are held in one array, which has two thousand million bytes at most.
    private const int MostBoards = 20_000;

    /// <summary>Reads <c>--boards N --rounds N --seed N --threads N --tests N</c>; what is left out is as above.</summary>
    /// <exception cref="ArgumentException">Something else is said.</exception>
    public static SignOptions Parse(IReadOnlyList<string> words) => NumberedWords.Fold(words, new SignOptions(), (options, word, number) => word switch
    {
        "--boards" when number > MostBoards => throw new ArgumentException($"At most {MostBoards} boards fit into the memory that is kept for them."),
        "--boards" => options with { Boards = Whole(number) },
        "--rounds" => options with { Rounds = number },
        "--seed" => options with { Seed = number },
        "--threads" => options with { Threads = number },
        "--tests" => options with { Tests = Whole(number) },
        _ => throw new ArgumentException($"{word} is none of --boards, --rounds, --seed, --threads, --tests."),
    });

    /// <summary>As they are read, but for the threads.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"signs --boards {Boards} --rounds {Rounds} --seed {Seed} --tests {Tests}");

    private static int Whole(int number) => (number + 9) / 10 * 10;
}
