using System.Security.Cryptography;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Recording;

/// <summary>Writes down how the network that reads signs was made and how well it reads.</summary>
internal sealed class SignRecord : WrittenRecord<SignRecord>
{
    /// <summary>What was made, and how.</summary>
    public SignRecord Add(byte[] model, long weights, BoardOptions options, SignSet samples, (float Classes, float Lines, float Covers) temperatures) => Add($"""
        # The network that reads signs among what stands around them

        `signs.onnx` ({model.Length:N0} bytes, {weights:N0} weights of two bytes) was written, and this record with it, by

        ```
        dotnet run -c Release --project tests/Companion.Sight.Training -- {options}
        ```

        - sha256 of the network: `{Convert.ToHexStringLower(SHA256.HashData(model))}`
        - {samples.Count:N0} signs cut out of {options.Boards:N0} painted boards as the companion cuts them out, with what it cuts out for a second look;
          {Part(samples.Kinds.Where((_, index) => !samples.IsDigit(index)).Count(), samples.Count)} are no digit, a line goes through {Part(samples.Lines.Count(line => line == 1), samples.Count)};
          {options.Rounds} rounds through them
        - the boards are made up like those of the tests, but painted without a browser, in other families, with more lines through marks, of more
          kinds, and more pointers: `tests/Companion.Sight.Training/Boards`
        - temperatures, {Calibration.Caution} times what fits the tuning families best: classes {temperatures.Classes:0.000}, lines {temperatures.Lines:0.000}, covers {temperatures.Covers:0.000}

        """);

    /// <summary>What was read of families never trained on.</summary>
    public SignRecord Add(SignFigures figures) => Add($"""
        ## Families never trained on

        Of {figures.Count:N0} signs, where *unsure* is what is read with a certainty below {CellReading.Sure}:

        | read rightly | unsure | wrong and not unsure |
        | ---: | ---: | ---: |
        | {Part(figures.Count - figures.Wrong, figures.Count)} | {Part(figures.HeldBack, figures.Count)} | {Part(figures.WrongEntered, figures.Count)} ({figures.WrongEntered}) |

        Of its digits, *surely* from 98 % on:

        | | there | missed | surely missed | not there | invented | surely invented |
        | --- | ---: | ---: | ---: | ---: | ---: | ---: |
        {Row("a line through it", figures.Lines)}
        {Row("a fifth or more of it covered", figures.Covers)}

        """);

    private static string Row(string name, Told told) => FormattableString.Invariant(
        $"| {name} | {told.There:N0} | {told.Missed} | {told.SurelyMissed} | {told.Elsewhere:N0} | {told.Invented} | {told.SurelyInvented} |");
}
