using System.Globalization;

namespace Companion.Sight.Training;

/// <summary>How to train a network with painted boards.</summary>
/// <param name="Network">Its name.</param>
/// <param name="Boards">How many boards to paint, in tens.</param>
/// <param name="Rounds">How often to go through what is cut out of them.</param>
/// <param name="Seed">The lot.</param>
/// <param name="Threads">How many threads to use; the result does not depend on it.</param>
/// <param name="Tests">How many boards to test with, in tens; as many are painted to tune with.</param>
internal sealed record BoardOptions(string Network, int Boards, int Rounds, int Seed = 1, int Threads = 2, int Tests = 300)
{
    // The images of their signs are held in one array, which has two thousand million bytes at most; those of cells take a quarter of a
    // megabyte a board.
    private const int MostBoards = 20_000;

    /// <summary>For the network that reads signs among what stands around them.</summary>
    public static BoardOptions Signs { get; } = new("signs", 18_000, 4);

    /// <summary>For the network that reads whole cells.</summary>
    public static BoardOptions Cells { get; } = new("cells", 16_000, 3);

    /// <summary>Reads <c>--boards N --rounds N --seed N --threads N --tests N</c>; what is left out stays as it is.</summary>
    /// <exception cref="ArgumentException">Something else is said.</exception>
    public BoardOptions With(IReadOnlyList<string> words) => NumberedWords.Fold(words, this, (options, word, number) => word switch
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
        string.Create(CultureInfo.InvariantCulture, $"{Network} --boards {Boards} --rounds {Rounds} --seed {Seed} --tests {Tests}");

    private static int Whole(int number) => (number + 9) / 10 * 10;
}
