using System.Globalization;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training;

/// <summary>How to train.</summary>
/// <param name="Samples">How many samples to draw.</param>
/// <param name="Rounds">How often to go through them.</param>
/// <param name="Seed">The lot.</param>
/// <param name="Threads">How many threads to use; the result does not depend on it.</param>
/// <param name="Tests">How many samples of each size to test with.</param>
internal sealed record TrainingOptions(int Samples = 600_000, int Rounds = 3, int Seed = 1, int Threads = 2, int Tests = 20_000)
{
    /// <summary>The repository that the program was built from.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Reads <c>--samples N --rounds N --seed N --threads N --tests N</c>; what is left out is as above.</summary>
    /// <exception cref="ArgumentException">Something else is said.</exception>
    public static TrainingOptions Parse(IReadOnlyList<string> words) => NumberedWords.Fold(words, new TrainingOptions(), (options, word, number) => word switch
    {
        "--samples" => options with { Samples = Whole(number) },
        "--rounds" => options with { Rounds = number },
        "--seed" => options with { Seed = number },
        "--threads" => options with { Threads = number },
        "--tests" => options with { Tests = Whole(number) },
        _ => throw new ArgumentException($"{word} is none of --samples, --rounds, --seed, --threads, --tests."),
    });

    /// <summary>As they are read, but for the threads.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"--samples {Samples} --rounds {Rounds} --seed {Seed} --tests {Tests}");

    private static int Whole(int number) => (number + SampleSet.Portion - 1) / SampleSet.Portion * SampleSet.Portion;

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Companion.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The training runs inside the repository only.");
    }
}
