using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using Companion.Server.Data;
using Microsoft.Data.Sqlite;

namespace Companion.Server.Log;

/// <summary>
/// Saves what can be read of a damaged event log: all events before the damage, and behind it every whole show. SQLite itself sees to a
/// write-ahead log that was cut off.
/// </summary>
internal static class Salvage
{
    private static readonly byte[] Head = Encoding.ASCII.GetBytes("SQLite format 3\0");

    // Two bytes, most significant first (SQLite's database file format, 1.3.2).
    private const int PageSizeAt = 16;

    private static readonly string[] Beside = ["-wal", "-shm"];

    /// <summary>
    /// Whether the file ends within a page, as no program of SQLite's leaves it. SQLite reads on as if zeros followed. While there is a
    /// write-ahead log the end may stand there.
    /// </summary>
    /// <param name="folder">Its folder, of which nothing is open.</param>
    public static bool EndsWithinPage(DataFolder folder)
    {
        if (!File.Exists(folder.Events) || new FileInfo(folder.Events + Beside[0]) is { Exists: true, Length: > 0 })
            return false;
        using var file = File.OpenRead(folder.Events);
        return CutPage(file) > 0;
    }

    /// <summary>Whether the file is cut within its first page. SQLite takes it for an empty one, and writes over it.</summary>
    /// <param name="folder">Its folder, of which nothing is open.</param>
    public static bool HasNoPage(DataFolder folder)
    {
        if (!File.Exists(folder.Events))
            return false;
        using var file = File.OpenRead(folder.Events);
        return file.Length > 0 && CutPage(file) == file.Length;
    }

    /// <summary>Whether nothing is damaged.</summary>
    /// <param name="connection">The opened file.</param>
    /// <exception cref="SqliteException">It is damaged so that it cannot even be looked through.</exception>
    public static bool IsSound(SqliteConnection connection)
    {
        using var check = connection.Command("PRAGMA quick_check(1)");
        return check.ExecuteScalar() is "ok";
    }

    /// <summary>Whether the file once was one of SQLite's.</summary>
    /// <param name="folder">Its folder.</param>
    public static bool IsPossible(DataFolder folder)
    {
        Span<byte> head = stackalloc byte[Head.Length];
        using var file = File.OpenRead(folder.Events);
        return Head.AsSpan().StartsWith(head[..file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false)]);
    }

    /// <summary>Puts a new file in place of the damaged one, which is kept beside it.</summary>
    /// <param name="folder">The folder, taken for this program.</param>
    /// <returns>What was done, in plain sentences.</returns>
    public static string Run(DataFolder folder)
    {
        var kept = Keep(folder);
        var (copy, draft) = (folder.Events + ".reading", folder.Events + ".new");
        foreach (var path in new[] { copy, draft })
            Delete(path);
        Copy(kept, copy);
        CutToPages(copy);
        OwnerOnly.MakeFile(draft);
        long count;
        using (var into = EventDatabase.Open(draft))
        {
            count = Rescue(copy, into);
            // All of it into the one file, so that it can be moved.
            into.Run("PRAGMA wal_checkpoint(TRUNCATE); PRAGMA journal_mode=DELETE");
        }

        Delete(copy);
        foreach (var end in Beside)
            File.Delete(folder.Events + end);
        File.Move(draft, folder.Events, overwrite: true);
        return $"The event log was damaged: {count} events could be read and are there again. The damaged file is kept as {kept}.";
    }

    private static string Keep(DataFolder folder)
    {
        var (kept, number) = (folder.Events + ".damaged", 1);
        while (File.Exists(kept))
            kept = string.Create(CultureInfo.InvariantCulture, $"{folder.Events}.damaged-{++number}");
        Copy(folder.Events, kept);
        return kept;
    }

    private static long Rescue(string damaged, SqliteConnection into)
    {
        using var transaction = into.BeginTransaction();
        try
        {
            using var from = EventDatabase.Connect(damaged);
            // Otherwise a file that is shorter than its head says is refused as a whole.
            from.Run("PRAGMA writable_schema=ON");
            SalvagedRows.Copy(from, into);
        }
        catch (SqliteException)
        {
            // Nothing more can be read.
        }

        SalvagedRows.NameShows(into);
        NoteTable.Gather(into);
        var count = into.Number("SELECT count(*) FROM event") ?? 0;
        transaction.Commit();
        return count;
    }

    /// <summary>Takes off a last page that is not whole. A page is written from both ends: one that is cut reads as if it held events of zeros.</summary>
    /// <param name="path">The file.</param>
    public static void CutToPages(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite);
        file.SetLength(file.Length - CutPage(file));
    }

    // How much there is of a last page that is not whole.
    private static long CutPage(FileStream file)
    {
        Span<byte> head = stackalloc byte[PageSizeAt + 2];
        if (file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) < head.Length)
            return file.Length;
        return BinaryPrimitives.ReadUInt16BigEndian(head[PageSizeAt..]) is >= 512 and var size ? file.Length % size : 0;
    }

    private static void Copy(string from, string to)
    {
        foreach (var end in Beside.Prepend("").Where(end => File.Exists(from + end)))
        {
            File.Copy(from + end, to + end, overwrite: true);
            OwnerOnly.Close(to + end);
        }
    }

    private static void Delete(string path)
    {
        foreach (var end in Beside.Prepend(""))
            File.Delete(path + end);
    }
}
