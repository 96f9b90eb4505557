using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Server.CommandLine;

/// <summary>Positions to practise on from a file of puzzles, or of positions of puzzles.</summary>
/// <param name="file">Its name, or a hyphen for what is piped in.</param>
/// <param name="ladder">The rules.</param>
/// <param name="rule">The rule in question.</param>
internal sealed class PositionsOfFile(string file, Ladder ladder, RuleId rule)
{
    private readonly List<string> _faults = [];
    private int _read;

    /// <summary>How many lines were read so far; may be asked for from another thread.</summary>
    public int Read => Volatile.Read(ref _read);

    /// <summary>What is wrong with lines that are no puzzles, a sentence each, in the order of the lines.</summary>
    public IReadOnlyList<string> Faults => _faults;

    /// <summary>For each puzzle its positions; those that are not asked for are not looked for.</summary>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="PlainException">The file cannot be read.</exception>
    public IEnumerable<IEnumerable<PracticePosition>> Puzzles(CancellationToken cancel)
    {
        using var reader = PuzzleFile.Open(file);
        foreach (var (line, text) in PuzzleFile.Lines(reader))
        {
            cancel.ThrowIfCancellationRequested();
            Interlocked.Increment(ref _read);
            var reading = Puzzle.Read(BoardText.Read(text));
            if (reading.IsGood)
                yield return PracticePosition.Along(reading.Value.Board, ladder, rule, cancel).Select(position => position with { Source = $"line {line}" });
            else
                _faults.Add($"Line {line}: {reading.Faults[0].Sentence}");
        }
    }
}
