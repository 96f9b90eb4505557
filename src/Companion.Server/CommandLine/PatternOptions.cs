using System.CommandLine;
using Companion.Drawing.Pictures;
using Companion.Engine.Proofs;

namespace Companion.Server.CommandLine;

/// <summary>The options of a command that draws a deduction on a board: which one, and how much of it.</summary>
/// <param name="usual">How much of it unless something else is asked for.</param>
/// <param name="why">What is said of that, as in "which gives nothing away"; may be empty.</param>
internal sealed class PatternOptions(Grade usual, string why = "")
{
    private readonly Option<int?> _deduction = PlainOption.Number(
        "--deduction", "Which open deduction to draw, by its number in the scan; what is on air by default.", 1, int.MaxValue);

    private readonly Option<int?> _grade = PlainOption.Number(
        "--grade", $"How much of it: 1 where, 2 what, 3 which, 4 why; {(int)usual} by default{(why.Length > 0 ? $", {why}" : "")}.", 1, 4);

    /// <summary>Gives a command these options.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Add(_deduction);
        command.Add(_grade);
    }

    /// <summary>What is to be drawn over the board; null for nothing.</summary>
    /// <param name="asked">What was typed.</param>
    /// <param name="scene">The scene.</param>
    /// <param name="wording">The words.</param>
    /// <param name="cancel">Stops looking for deductions.</param>
    /// <exception cref="PlainException">There is no deduction of that number.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public Picture? On(ParseResult asked, StillScene scene, Wording wording, CancellationToken cancel) =>
        asked.GetValue(_deduction) is { } number
            ? scene.PictureOf(number, (Grade)(asked.GetValue(_grade) ?? (int)usual), wording, cancel)
            : scene.OnAir;
}
