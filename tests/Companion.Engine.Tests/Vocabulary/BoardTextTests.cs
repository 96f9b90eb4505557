using CsCheck;

namespace Companion.Engine.Tests.Vocabulary;

public class BoardTextTests
{
    // The first example of the essay "Solving Any Sudoku Puzzle" by P. Norvig (2006).
    private const string Cells = "53..7....6..195....98....6.8...6...34..8.3..17...2...6.6....28....419..5....8..79";

    [Theory]
    [InlineData("81 characters", Cells)]
    [InlineData("a line end after it", Cells + "\n")]
    [InlineData("zeros", "530070000600195000098000060800060003400803001700020006060000280000419005000080079")]
    [InlineData("spaces", "53  7    6  195    98    6 8   6   34  8 3  17   2   6 6    28    419  5    8  79")]
    [InlineData("nine lines", """
        53..7....
        6..195...
        .98....6.
        8...6...3
        4..8.3..1
        7...2...6
        .6....28.
        ...419..5
        ....8..79
        """)]
    [InlineData("nine lines of zeros with empty lines around", """

        530070000
        600195000
        098000060
        800060003
        400803001
        700020006
        060000280
        000419005
        000080079


        """)]
    [InlineData("blanks at the ends of lines trimmed", """
        53  7
        6  195
         98    6
        8   6   3
        4  8 3  1
        7   2   6
         6    28
           419  5
            8  79
        """)]
    [InlineData("ornament between blocks", """
        5 3 . | . 7 . | . . .
        6 . . | 1 9 5 | . . .
        . 9 8 | . . . | . 6 .
        ------+-------+------
        8 . . | . 6 . | . . 3
        4 . . | 8 . 3 | . . 1
        7 . . | . 2 . | . . 6
        ------+-------+------
        . 6 . | . . . | 2 8 .
        . . . | 4 1 9 | . . 5
        . . . | . 8 . | . 7 9
        """)]
    [InlineData("a frame around it", """
        +-----+-----+-----+
        |5 3 .|. 7 .|. . .|
        |6 . .|1 9 5|. . .|
        |. 9 8|. . .|. 6 .|
        +-----+-----+-----+
        |8 . .|. 6 .|. . 3|
        |4 . .|8 . 3|. . 1|
        |7 . .|. 2 .|. . 6|
        +-----+-----+-----+
        |. 6 .|. . .|2 8 .|
        |. . .|4 1 9|. . 5|
        |. . .|. 8 .|. 7 9|
        +-----+-----+-----+
        """)]
    [InlineData("empty lines between blocks", """
        53. .7. ...
        6.. 195 ...
        .98 ... .6.

        8.. .6. ..3
        4.. 8.3 ..1
        7.. .2. ..6

        .6. ... 28.
        ... 419 ..5
        ... .8. .79
        """)]
    public void People_paste(string layout, string text) => Assert.True(Cells == BoardText.Read(text).Text, layout);

    [Theory]
    [InlineData("first", 0)]
    [InlineData("middle", 4)]
    [InlineData("last", 8)]
    public void An_empty_row_whose_blanks_were_all_trimmed_is_still_a_row(string which, int row)
    {
        var rows = Enumerable.Repeat("1", 9).ToArray();
        rows[row] = "";

        var text = BoardText.Read(string.Concat(rows.Select(line => $"{line}\n"))).Text;

        Assert.True(Cell.Count == text.Length && text.Chunk(9).ElementAt(row).All(cell => cell == BoardText.Blank), which);
        Assert.Equal(8, text.Count(cell => cell == '1'));
    }

    [Fact]
    public void Line_ends_of_every_system_are_taken()
    {
        var lines = BoardText.WriteLines(Board.Parse(Cells));

        Assert.Equal(Cells, BoardText.Read(lines.Replace("\n", "\r\n", StringComparison.Ordinal)).Text);
        Assert.Equal(Cells, BoardText.Read(lines.Replace("\n", "\r", StringComparison.Ordinal)).Text);
        Assert.Equal(Cells, BoardText.Read(lines.Replace("\n", "  \n", StringComparison.Ordinal)).Text);
    }

    [Fact]
    public void What_does_not_fit_is_kept_for_the_validation_to_name()
    {
        Assert.Equal("12x", BoardText.Read("12x").Text);
        Assert.Equal("", BoardText.Read("").Text);
        Assert.Equal(72, BoardText.Read(string.Concat(Enumerable.Repeat(".........\n", 8))).Text.Length);
        Assert.Equal(82, BoardText.Read(new string('.', 82)).Text.Length);
    }

    [Fact]
    public void A_board_is_written_as_81_characters_or_nine_lines_and_read_again() => Any.Grid.Sample(grid =>
    {
        var board = Board.Parse(grid);
        Assert.Equal(grid, BoardText.Write(board));
        Assert.Equal(grid, board.ToString());
        Assert.Equal(9, BoardText.WriteLines(board).Split('\n').Length);
        Assert.Equal(grid, BoardText.Read(BoardText.WriteLines(board)).Text);
    });
}
