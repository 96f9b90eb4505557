using Companion.Engine.Planning;

namespace Companion.Server.Planning;

/// <summary>How hard a puzzle is, as it is written; see <see cref="PuzzleGrade"/>.</summary>
/// <param name="Word">The grade in a word.</param>
/// <param name="Work">How much there is to look at; null where the ladder does not lead to the solution.</param>
/// <param name="Rounds">How many rounds there are.</param>
/// <param name="Gates">How many of them have only one way on.</param>
public sealed record GradeFigures(string Word, int? Work, int Rounds, int Gates)
{
    /// <summary>The figures of a grade.</summary>
    /// <param name="grade">The grade.</param>
    internal static GradeFigures Of(PuzzleGrade grade) => new(WordOf(grade), grade.Work, grade.Rounds, grade.Gates);

    /// <summary>A grade's word.</summary>
    /// <param name="grade">The grade.</param>
    internal static string WordOf(PuzzleGrade grade) => grade.Steepness.ToString().ToLowerInvariant();
}
