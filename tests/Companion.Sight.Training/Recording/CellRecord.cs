using System.Security.Cryptography;
using Companion.Sight.Training.Boards;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Recording;

/// <summary>Writes down how the network that reads whole cells was made and how well it reads.</summary>
internal sealed class CellRecord : WrittenRecord<CellRecord>
{
    /// <summary>What was made, and how.</summary>
    public CellRecord Add(byte[] model, long weights, BoardOptions options, CellSamples samples) => Add($"""
        # The network that reads whole cells

        `cells.onnx` ({model.Length:N0} bytes, {weights:N0} weights of two bytes) was written, and this record with it, by

        ```
        dotnet run -c Release --project tests/Companion.Sight.Training -- {options}
        ```

        - sha256 of the network: `{Convert.ToHexStringLower(SHA256.HashData(model))}`
        - {samples.Count:N0} cells of {options.Boards:N0} painted boards, more of those with lines through marks and with something over them;
          {options.Rounds} rounds through them
        - the boards are those of `signs.md`: `tests/Companion.Sight.Training/Boards`
        - its certainties are what it says, not cooled: it is asked about unsure cells alone, and makes none surer

        """);

    /// <summary>What was read of families never trained on.</summary>
    public CellRecord Add(CellTally tally)
    {
        var lines = Told.Of(tally.Lines);
        return Add($"""
            ## Families never trained on

            Of {tally.Cells:N0} cells {Part(tally.Right, tally.Cells)} were read rightly with all lines, where what is likelier than not counts as read.

            | digits and marks | missed | mistaken | invented | lines through marks | missed | marks without | invented |
            | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
            | {tally.Digits:N0} | {tally.Missed} | {tally.Mistaken} | {tally.Invented} | {lines.There:N0} | {lines.Missed} | {lines.Elsewhere:N0} | {lines.Invented} |

            """);
    }
}
