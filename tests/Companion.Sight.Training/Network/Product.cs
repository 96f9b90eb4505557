using System.Runtime.Intrinsics;

namespace Companion.Sight.Training.Network;

/// <summary>
/// Products of matrices. Each number is summed up in one fixed order, whatever the width of the machine's vectors, so that a training
/// gives the same weights everywhere.
/// </summary>
internal static unsafe class Product
{
    private const int Lanes = 16;
    private const int Rows = 8;

    /// <summary>Adds a product to a matrix: C += A B.</summary>
    /// <param name="m">Rows of A and C.</param>
    /// <param name="n">Columns of B and C, a multiple of 16.</param>
    /// <param name="k">Columns of A, rows of B.</param>
    /// <param name="a">A.</param>
    /// <param name="aRow">From one row of A to the next.</param>
    /// <param name="aColumn">From one column of A to the next: with the two swapped, A is taken transposed.</param>
    /// <param name="b">B, row by row.</param>
    /// <param name="c">C, row by row.</param>
    public static void Add(int m, int n, int k, float* a, int aRow, int aColumn, float* b, float* c)
    {
        for (var column = 0; column < n; column += Lanes)
        {
            var row = 0;
            for (; row + Rows <= m; row += Rows)
                AddRows(k, a + row * aRow, aRow, aColumn, b + column, n, c + row * n + column);
            for (; row < m; row++)
                AddRow(k, a + row * aRow, aColumn, b + column, n, c + row * n + column);
        }
    }

    private static void AddRow(int k, float* a, int aColumn, float* b, int n, float* c)
    {
        var sum = Vector512.Load(c);
        for (var index = 0; index < k; index++, a += aColumn, b += n)
            sum = Vector512.FusedMultiplyAdd(Vector512.Create(*a), Vector512.Load(b), sum);
        sum.Store(c);
    }

    private static void AddRows(int k, float* a, int aRow, int aColumn, float* b, int n, float* c)
    {
        var (c0, c1, c2, c3) = (Vector512.Load(c), Vector512.Load(c + n), Vector512.Load(c + 2 * n), Vector512.Load(c + 3 * n));
        var (c4, c5, c6, c7) = (Vector512.Load(c + 4 * n), Vector512.Load(c + 5 * n), Vector512.Load(c + 6 * n), Vector512.Load(c + 7 * n));
        float* a4 = a + 4 * aRow;
        for (var index = 0; index < k; index++, a += aColumn, a4 += aColumn, b += n)
        {
            var row = Vector512.Load(b);
            c0 = Vector512.FusedMultiplyAdd(Vector512.Create(a[0]), row, c0);
            c1 = Vector512.FusedMultiplyAdd(Vector512.Create(a[aRow]), row, c1);
            c2 = Vector512.FusedMultiplyAdd(Vector512.Create(a[2 * aRow]), row, c2);
            c3 = Vector512.FusedMultiplyAdd(Vector512.Create(a[3 * aRow]), row, c3);
            c4 = Vector512.FusedMultiplyAdd(Vector512.Create(a4[0]), row, c4);
            c5 = Vector512.FusedMultiplyAdd(Vector512.Create(a4[aRow]), row, c5);
            c6 = Vector512.FusedMultiplyAdd(Vector512.Create(a4[2 * aRow]), row, c6);
            c7 = Vector512.FusedMultiplyAdd(Vector512.Create(a4[3 * aRow]), row, c7);
        }

        c0.Store(c);
        c1.Store(c + n);
        c2.Store(c + 2 * n);
        c3.Store(c + 3 * n);
        c4.Store(c + 4 * n);
        c5.Store(c + 5 * n);
        c6.Store(c + 6 * n);
        c7.Store(c + 7 * n);
    }
}
