using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Companion.Sight.Samples;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Recording;

/// <summary>Writes down how the network was made and how well it reads.</summary>
internal sealed class Record
{
    private readonly StringBuilder _text = new();

    /// <summary>The text so far.</summary>
    public override string ToString() => _text.ToString();

    /// <summary>What was made, and how.</summary>
    public Record Add(byte[] model, TrainingOptions options, float temperature)
    {
        Line($"# The network that reads digits");
        Line();
        Line($"`digits.onnx` ({model.Length:N0} bytes, {Parameters.Count - (Parameters.Outputs - GlyphSample.Classes) * (Parameters.Hidden + 1):N0} weights) was written, and this record with it, by");
        Line();
        Line($"```");
        Line($"dotnet run -c Release --project tests/Companion.Sight.Training -- --samples {options.Samples} --rounds {options.Rounds} --seed {options.Seed} --tests {options.Tests}");
        Line($"```");
        Line();
        Line($"- sha256 of the network: `{Convert.ToHexStringLower(SHA256.HashData(model))}`");
        Line($"- drawn samples: {options.Samples:N0}, half of them big (16 to 64 pixels), half small (8 to 16 pixels); {100 * SampleRange.NoDigits:0} % are no digit; {options.Rounds} rounds through them, seed {options.Seed}");
        Line($"- temperature, fitted on the tuning families: {temperature:0.000}");
        Line();
        return this;
    }

    /// <summary>What was read of families never trained on.</summary>
    public Record Add(string title, Figures figures)
    {
        Line($"## {title}");
        Line();
        Line($"Of {figures.Count:N0} samples in families never trained on:");
        Line();
        Line($"| read rightly | the digits of them | held back, below the certainty that is entered unasked | wrong and entered |");
        Line($"| ---: | ---: | ---: | ---: |");
        Line($"| {Part(figures.Count - figures.Wrong, figures.Count)} | {100 * figures.DigitsRight:0.000} % | {Part(figures.HeldBack, figures.Count)} | {Part(figures.WrongEntered, figures.Count)} ({figures.WrongEntered}) |");
        Line();
        Line($"Drawn as (rows), read as (columns):");
        Line();
        Line($"| | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | none |");
        Line($"| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        for (var kind = 0; kind < GlyphSample.Classes; kind++)
            Line($"| {(kind == GlyphSample.NoDigit ? "none" : kind + 1)} | {string.Join(" | ", Enumerable.Range(0, GlyphSample.Classes).Select(read => figures.Confusions[kind, read]))} |");
        Line();
        Line($"Wrong by family: {string.Join(", ", figures.WrongByFamily.Where(family => family.Wrong > 0).Select(family => $"{(family.Family.Length == 0 ? "plain shapes" : family.Family)} {family.Wrong} of {family.Count}"))}.");
        Line();
        return this;
    }

    /// <summary>How far lessons reach.</summary>
    public Record Add(IEnumerable<(string Name, LessonFigures Figures)> lessons)
    {
        Line($"## Lessons");
        Line();
        Line($"One glyph of a screen is taught as another digit. Read as taught are then, of glyphs in the same face and size but with faults of their own:");
        Line();
        Line($"| | the same digit | other digits |");
        Line($"| --- | ---: | ---: |");
        foreach (var (name, figures) in lessons)
            Line($"| {name} | {100 * figures.Taken:0.0} % | {100 * figures.Spilt:0.000} % |");
        Line();
        return this;
    }

    /// <summary>Which families there are.</summary>
    public Record Add(string title, IReadOnlyList<FontFamily> families)
    {
        Line($"{title}, {families.Count} families with {families.Sum(family => family.Faces.Count)} faces: {string.Join(", ", families.Select(family => family.Name))}.");
        Line();
        return this;
    }

    private static string Part(int count, int all) => $"{(100.0 * count / all).ToString("0.000", CultureInfo.InvariantCulture)} %";

    private void Line() => Line($"");

    private void Line(FormattableString line) => _text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
