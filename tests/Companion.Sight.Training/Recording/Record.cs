using System.Globalization;
using System.Security.Cryptography;
using Companion.Sight.Samples;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Recording;

/// <summary>Writes down how the network that reads glyphs was made and how well it reads.</summary>
internal sealed class Record : WrittenRecord<Record>
{
    /// <summary>What was made, and how.</summary>
    public Record Add(byte[] model, long weights, TrainingOptions options, float temperature) => Add($"""
        # The network that reads digits

        `digits.onnx` ({model.Length:N0} bytes, {weights:N0} weights of two bytes) was written, and this record with it, by

        ```
        dotnet run -c Release --project tests/Companion.Sight.Training -- {options}
        ```

        - sha256 of the network: `{Convert.ToHexStringLower(SHA256.HashData(model))}`
        - {options.Samples:N0} drawn samples, half of them {Sizes(SampleRange.Big)}, half {Sizes(SampleRange.Small)};
          {100 * SampleRange.NoDigits:0} % are no digit; {options.Rounds} rounds through them
        - temperature, {Calibration.Caution} times what fits the tuning families best: {temperature:0.000}
        - what is drawn, and with which faults: `tests/Companion.Sight.Training/Samples`; all figures below are of samples with the same faults

        """);

    /// <summary>What was read of families never trained on.</summary>
    public Record Add(string title, SampleRange range, Figures figures) => Add($"""
        ## {title}, {Sizes(range)}

        Of {figures.Count:N0} samples in families never trained on, where *held back* is what is read with a certainty below {CellReading.Sure}:

        | read rightly | the digits of them | held back | wrong and not held back |
        | ---: | ---: | ---: | ---: |
        | {Part(figures.Count - figures.Wrong, figures.Count)} | {100 * figures.DigitsRight:0.000} % | {Part(figures.HeldBack, figures.Count)} | {Part(figures.WrongEntered, figures.Count)} ({figures.WrongEntered}) |

        Drawn as (rows), read as (columns):

        | | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | none |
        | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
        {string.Join('\n', Enumerable.Range(0, GlyphSample.Classes).Select(kind => Row(figures, kind)))}

        Wrong by family: {string.Join(", ", figures.WrongByFamily.Where(family => family.Wrong > 0).Select(Named))}.

        """);

    /// <summary>How far lessons reach.</summary>
    public Record Add(IEnumerable<(string Name, LessonFigures Figures)> lessons) => Add($"""
        ## Lessons

        One glyph of a screen is taught as another digit. Read as taught are then, of glyphs in the same face and size, but each with faults
        of its own, more than those of one screen differ:

        | | the same digit | other digits |
        | --- | ---: | ---: |
        {string.Join('\n', lessons.Select(Row))}

        """);

    private static string Row(Figures figures, int kind) =>
        $"| {(kind == GlyphSample.NoDigit ? "none" : kind + 1)} | {string.Join(" | ", Enumerable.Range(0, GlyphSample.Classes).Select(read => figures.Confusions[kind, read]))} |";

    private static string Row((string Name, LessonFigures Figures) lesson) => string.Create(
        CultureInfo.InvariantCulture, $"| {lesson.Name} | {100 * lesson.Figures.Taken:0.0} % | {100 * lesson.Figures.Spilt:0.000} % |");

    private static string Named((string Family, int Wrong, int Count) family) =>
        $"{(family.Family.Length == 0 ? "plain shapes" : family.Family)} {family.Wrong} of {family.Count}";

    private static string Sizes(SampleRange range) => $"{range.From:0} to {range.To:0} pixels high";
}
