using System.Collections.Immutable;
using System.Globalization;

namespace Companion.Sight.Tests.Boards;

/// <summary>Counts what was read rightly and wrongly on drawn boards.</summary>
internal sealed class SightTally
{
    public int Boards { get; private set; }

    /// <summary>Boards whose grid was not found.</summary>
    public int Lost { get; private set; }

    /// <summary>Boards on which every digit and mark that can be told was read rightly, sure or not, and what is covered is held back.</summary>
    public int Right { get; private set; }

    public int Digits { get; private set; }

    public int WrongDigits { get; private set; }

    public int Marks { get; private set; }

    /// <summary>Marks that were missed, or read though they are not there: whichever are more, cell by cell.</summary>
    public int WrongMarks { get; private set; }

    /// <summary>Marks, rightly read, of which it was not seen that a line goes through them, or seen though none does.</summary>
    public int WrongStrikes { get; private set; }

    /// <summary>Cells that are held back for the presenter to look at.</summary>
    public int Held { get; private set; }

    /// <summary>Cells in which a digit, a mark or a line through one was read wrongly and that are not held back.</summary>
    public int Silent { get; private set; }

    /// <summary>
    /// Cells in which so much of a digit, of a mark or of a line through one is covered by something that it cannot be told
    /// (<see cref="Covering"/>): right is to hold them back, with everything else in them read rightly and nothing invented.
    /// </summary>
    public int Covered { get; private set; }

    /// <summary>Of those the ones that are right.</summary>
    public int CoveredRight { get; private set; }

    /// <summary>Digits that are told to be given or entered, of boards that show it; wrong ones; and those left open.</summary>
    public int Told { get; private set; }

    public int WronglyTold { get; private set; }

    public int LeftOpen { get; private set; }

    /// <summary>What was read (0 for nothing) where a digit stands: rows are digits, then marks.</summary>
    public int[,] DigitsReadAs { get; } = new int[10, 10];

    public int[,] MarksReadAs { get; } = new int[10, 10];

    public List<string> Failures { get; } = [];

    public float PartOfDigits => 1 - WrongDigits / (float)Math.Max(1, Digits);

    public float PartOfMarks => 1 - WrongMarks / (float)Math.Max(1, Marks);

    public void Add(DrawnBoard board, BoardReading? reading)
    {
        Boards++;
        if (reading is null)
        {
            Lost++;
            Failures.Add($"board {board.Style.Seed}: no grid");
            var lost = board.Cells.Count(cell => cell.Digit > 0 && !cell.IsCovered);
            (Digits, WrongDigits) = (Digits + lost, WrongDigits + lost);
            return;
        }

        var wrong = 0;
        for (var index = 0; index < 81; index++)
            wrong += Add(board, board.Cells[index], reading.Cells[index]) ? 0 : 1;
        Right += wrong == 0 ? 1 : 0;
        Tell(board, reading);
    }

    public void Print(TextWriter output, string name)
    {
        string Percent(int wrong, int all) => (100 - 100.0 * wrong / Math.Max(1, all)).ToString("0.00", CultureInfo.InvariantCulture) + " %";
        output.WriteLine($"| {name} | {Boards} | {Lost} | {Percent(Boards - Right, Boards)} | {Digits:N0} | {Percent(WrongDigits, Digits)} | {Marks:N0} | {Percent(WrongMarks, Marks)} "
            + $"| {WrongStrikes} | {(100f * Held / (81 * Math.Max(1, Boards))).ToString("0.00", CultureInfo.InvariantCulture)} | {Silent} | {Covered} | {CoveredRight} | {Percent(WronglyTold + LeftOpen, Told)} | {WronglyTold} |");
    }

    public static void PrintConfusion(TextWriter output, int[,] readAs)
    {
        output.WriteLine("| drawn | nothing | " + string.Join(" | ", Enumerable.Range(1, 9)) + " |");
        output.WriteLine("| --- |" + string.Concat(Enumerable.Repeat(" ---: |", 10)));
        for (var drawn = 1; drawn <= 9; drawn++)
            output.WriteLine($"| {drawn} | " + string.Join(" | ", Enumerable.Range(0, 10).Select(read => readAs[drawn, read])) + " |");
    }

    private bool Add(DrawnBoard board, DrawnCell drawn, CellReading read)
    {
        var digit = read.Digit?.Value ?? 0;
        var isRight = digit == drawn.Digit || (digit == 0 && drawn.IsCovered);
        if (drawn.Digit > 0 && !drawn.IsCovered)
        {
            Digits++;
            DigitsReadAs[drawn.Digit, digit]++;
            WrongDigits += isRight ? 0 : 1;
        }

        List<DrawnMark> visible = [.. drawn.Marks.Where(mark => !mark.IsCovered)];
        List<int> want = [.. visible.Select(mark => mark.Digit)];
        // What is covered may be read, but as nothing else.
        List<int> got = [.. Less([.. read.Marks.Select(mark => mark.Digit.Value)], drawn.Marks.Where(mark => mark.IsCovered).Select(mark => mark.Digit))];
        var (missed, added) = (Less(want, got), Less(got, want));
        Marks += want.Count;
        WrongMarks += Math.Max(missed.Length, added.Length);
        for (var index = 0; index < missed.Length; index++)
            MarksReadAs[missed[index], index < added.Length ? added[index] : 0]++;
        foreach (var mark in want.Except(missed))
            MarksReadAs[mark, mark]++;
        isRight &= missed.Length + added.Length == 0;
        var strikes = isRight ? visible.Count(mark => read.Marks.First(other => other.Digit.Value == mark.Digit).IsStruck != mark.IsStruck) : 0;
        WrongStrikes += strikes;
        Held += read.IsUnsure ? 1 : 0;
        isRight &= strikes == 0 && (read.IsUnsure || !drawn.HasCovered);
        if (drawn.HasCovered)
            (Covered, CoveredRight) = (Covered + 1, CoveredRight + (isRight ? 1 : 0));
        Silent += !isRight && !read.IsUnsure ? 1 : 0;
        if (!isRight)
            Failures.Add($"board {board.Style.Seed} {read.Cell}{(read.IsUnsure ? "" : " SILENT")}{(drawn.HasCovered ? " covered" : "")}: {Text(drawn.Digit, drawn.Marks)} read as {Text(digit, [.. read.Marks.Select(mark => new DrawnMark(mark.Digit.Value, mark.IsStruck))])}");
        return isRight;
    }

    private void Tell(DrawnBoard board, BoardReading reading)
    {
        var isMixed = board.Cells.Any(cell => cell.IsGiven) && board.Cells.Any(cell => cell.Digit > 0 && !cell.IsGiven);
        if (!board.Style.TellsGivens || !isMixed)
            return;
        for (var index = 0; index < 81; index++)
        {
            if (board.Cells[index].Digit == 0 || board.Cells[index].IsCovered || reading.Cells[index].Digit is null)
                continue;
            Told++;
            LeftOpen += reading.Cells[index].IsGiven is null ? 1 : 0;
            WronglyTold += reading.Cells[index].IsGiven is { } isGiven && isGiven != board.Cells[index].IsGiven ? 1 : 0;
        }
    }

    private static int[] Less(List<int> from, IEnumerable<int> taken)
    {
        var left = from.ToList();
        foreach (var value in taken)
            left.Remove(value);
        return [.. left];
    }

    private static string Text(int digit, ImmutableArray<DrawnMark> marks) =>
        $"{(digit == 0 ? "-" : digit)} [{string.Concat(marks.Select(mark => mark.IsStruck ? $"{mark.Digit}/" : $"{mark.Digit}"))}]";
}
