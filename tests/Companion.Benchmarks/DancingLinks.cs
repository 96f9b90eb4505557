namespace Companion.Benchmarks;

/// <summary>
/// A plain solver to compare with: exact cover by dancing links, after D. Knuth, "Dancing Links" (arXiv:cs/0011047). Its 324
/// columns are the demands "this cell has a digit" and "this digit stands in this row, column, block"; its 729 rows of four are
/// the candidates.
/// </summary>
internal sealed class DancingLinks
{
    // Node 0 is the root, 1 to 324 the column headers, then four nodes for each candidate, cell by cell, digit by digit.
    private const int Columns = 324;
    private const int Nodes = 1 + Columns + 729 * 4;

    private readonly int[] _left = new int[Nodes];
    private readonly int[] _right = new int[Nodes];
    private readonly int[] _up = new int[Nodes];
    private readonly int[] _down = new int[Nodes];
    private readonly int[] _column = new int[Nodes];
    private readonly int[] _size = new int[1 + Columns];
    private int _limit;
    private int _count;

    internal DancingLinks()
    {
        for (var header = 0; header <= Columns; header++)
        {
            _left[header] = header == 0 ? Columns : header - 1;
            _right[header] = header == Columns ? 0 : header + 1;
            _up[header] = _down[header] = header;
        }

        for (var candidate = 0; candidate < 729; candidate++)
            AddRow(candidate);
    }

    /// <summary>How many solutions the puzzle has, counted up to a limit.</summary>
    internal int Count(ReadOnlySpan<char> puzzle, int limit)
    {
        (_limit, _count) = (limit, 0);
        Span<int> given = stackalloc int[81];
        var givens = 0;
        for (var cell = 0; cell < 81; cell++)
        {
            if (puzzle[cell] is >= '1' and <= '9')
                given[givens++] = FirstNode(cell * 9 + puzzle[cell] - '1');
        }

        for (var i = 0; i < givens; i++)
            CoverRow(given[i]);
        Search();
        for (var i = givens - 1; i >= 0; i--)
            UncoverRow(given[i]);
        return _count;
    }

    private void Search()
    {
        if (_right[0] == 0)
        {
            _count++;
            return;
        }

        var column = Smallest();
        for (var node = _down[column]; node != column && _count < _limit; node = _down[node])
        {
            CoverRow(node);
            Search();
            UncoverRow(node);
        }
    }

    private int Smallest()
    {
        var smallest = _right[0];
        for (var column = smallest; column != 0; column = _right[column])
        {
            if (_size[column] < _size[smallest])
                smallest = column;
        }

        return smallest;
    }

    private void CoverRow(int node)
    {
        Cover(_column[node]);
        for (var other = _right[node]; other != node; other = _right[other])
            Cover(_column[other]);
    }

    private void UncoverRow(int node)
    {
        for (var other = _left[node]; other != node; other = _left[other])
            Uncover(_column[other]);
        Uncover(_column[node]);
    }

    private void Cover(int column)
    {
        _right[_left[column]] = _right[column];
        _left[_right[column]] = _left[column];
        for (var node = _down[column]; node != column; node = _down[node])
        {
            for (var other = _right[node]; other != node; other = _right[other])
            {
                _down[_up[other]] = _down[other];
                _up[_down[other]] = _up[other];
                _size[_column[other]]--;
            }
        }
    }

    private void Uncover(int column)
    {
        for (var node = _up[column]; node != column; node = _up[node])
        {
            for (var other = _left[node]; other != node; other = _left[other])
            {
                _size[_column[other]]++;
                _down[_up[other]] = _up[_down[other]] = other;
            }
        }

        _right[_left[column]] = _left[_right[column]] = column;
    }

    private static int FirstNode(int candidate) => 1 + Columns + candidate * 4;

    private void AddRow(int candidate)
    {
        var (cell, digit) = (candidate / 9, candidate % 9);
        var (row, column, block) = (cell / 9, cell % 9, cell / 27 * 3 + cell % 9 / 3);
        var first = FirstNode(candidate);
        Span<int> demands = [cell, 81 + row * 9 + digit, 162 + column * 9 + digit, 243 + block * 9 + digit];
        for (var i = 0; i < 4; i++)
        {
            var (node, header) = (first + i, 1 + demands[i]);
            (_left[node], _right[node]) = (first + (i + 3) % 4, first + (i + 1) % 4);
            (_up[node], _down[node]) = (_up[header], header);
            _down[_up[header]] = node;
            _up[header] = node;
            _column[node] = header;
            _size[header]++;
        }
    }
}
