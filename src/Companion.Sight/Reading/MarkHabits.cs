using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>What the sure marks of a board keep to, so that others will, too.</summary>
/// <param name="Places">Where the mark of each digit stands; null where the marks stand otherwise.</param>
/// <param name="IsAscending">Whether the marks of a cell ascend in <see cref="ReadingOrder"/>.</param>
/// <param name="IsUnseen">Whether no mark is a digit that stands in a house of its cell.</param>
/// <param name="Height">How high most are, as a part of the cell; 0 where there are too few.</param>
internal sealed record MarkHabits(DigitPlaces? Places, bool IsAscending, bool IsUnseen, float Height)
{
    // So few marks tell no habit, and nearly all of them have to keep to it: presenters make mistakes.
    private const int Fewest = 20;
    private const float NearlyAll = 0.97f;

    // Of most marks' height, what others may have: low figures, what an edge cuts off, what has a line through it.
    private const float Lower = 0.55f, Higher = 1.3f;

    /// <summary>Whether something is about as high as marks are.</summary>
    /// <param name="sign">The thing.</param>
    public bool IsAsHigh(Sign sign) => sign.Height >= Lower * Height && sign.Height <= Higher * Height;

    /// <summary>The habits of a board.</summary>
    /// <param name="cells">Its cells.</param>
    /// <param name="seen">For each cell, by its index, the digits that surely stand in its houses.</param>
    public static MarkHabits Of(IReadOnlyList<CellDigits> cells, IReadOnlyList<DigitSet> seen)
    {
        var (sure, pairs, ascending, unseen) = (new List<Sign>(), 0, 0, 0);
        foreach (var cell in cells)
        {
            for (var index = 0; index < cell.Marks.Count; index++)
            {
                if (!cell.Marks[index].IsSure)
                    continue;
                var digit = cell.Marks[index].Reading.Digit!.Value;
                sure.Add(cell.Marks[index]);
                unseen += seen[cell.Cell.Index].Contains(digit) ? 0 : 1;
                if (index == 0 || !cell.Marks[index - 1].IsSure)
                    continue;
                pairs++;
                ascending += cell.Marks[index - 1].Reading.Digit!.Value.Index < digit.Index ? 1 : 0;
            }
        }

        return new(DigitPlaces.Of(sure), IsHabit(ascending, pairs), IsHabit(unseen, sure.Count), Median(sure));
    }

    private static float Median(List<Sign> marks)
    {
        float[] heights = [.. marks.Select(mark => mark.Height)];
        return heights.Length < Fewest ? 0 : Ranked.At(heights, heights.Length / 2);
    }

    private static bool IsHabit(int keeping, int all) => all >= Fewest && keeping >= NearlyAll * all;
}
