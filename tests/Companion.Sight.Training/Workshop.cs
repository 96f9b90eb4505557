using System.Diagnostics;
using System.Globalization;
using Companion.Sight.Samples;

namespace Companion.Sight.Training;

/// <summary>What every training needs: the families, where results go, and a word now and then.</summary>
internal sealed class Workshop
{
    private readonly Stopwatch _watch = Stopwatch.StartNew();

    /// <summary>Brings the families.</summary>
    public Workshop()
    {
        Training = Families("training");
        Tuning = Families("tuning");
        HeldOut = Families("held-out");
        Say($"{Training.Count} families to train with");
    }

    /// <summary>The families to train with.</summary>
    public IReadOnlyList<FontFamily> Training { get; }

    /// <summary>Those to tune with.</summary>
    public IReadOnlyList<FontFamily> Tuning { get; }

    /// <summary>Those to test with, never trained on and never tuned on.</summary>
    public IReadOnlyList<FontFamily> HeldOut { get; }

    /// <summary>Says something, with the seconds since the beginning.</summary>
    public void Say(FormattableString line) =>
        Console.WriteLine($"{_watch.Elapsed.TotalSeconds.ToString("0", CultureInfo.InvariantCulture),5} s  {line.ToString(CultureInfo.InvariantCulture)}");

    /// <summary>Writes a network and its record.</summary>
    /// <param name="name">The file of the network.</param>
    /// <param name="network">The network.</param>
    /// <param name="recordName">The file of the record.</param>
    /// <param name="record">The record.</param>
    public void Write(string name, byte[] network, string recordName, string record)
    {
        var folder = Path.Combine(TrainingOptions.Root, "src", "Companion.Sight", "Weights");
        File.WriteAllBytes(Path.Combine(folder, name), network);
        File.WriteAllText(Path.Combine(folder, recordName), record);
        Say($"written to {folder}");
    }

    private static IReadOnlyList<FontFamily> Families(string list)
    {
        var folder = Path.Combine(TrainingOptions.Root, ".artifacts", "fonts", list);
        NpmPackages.Install(Path.Combine(TrainingOptions.Root, "tests", "Companion.Sight.Training", "Fonts", list), folder);
        return FontFamily.In(folder);
    }
}
