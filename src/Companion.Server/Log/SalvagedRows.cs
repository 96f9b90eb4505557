using Companion.Session.Events.Storage;
using Microsoft.Data.Sqlite;

namespace Companion.Server.Log;

/// <summary>Reads the lines of a damaged event log from both ends, as far as they can be read.</summary>
internal static class SalvagedRows
{
    private const string Begins = "show-begun";

    private const string Events = "SELECT sequence, at, kind, body FROM event";

    /// <summary>
    /// Copies what can be read: the shows first, which stand before most events. What happened here and each imported show are read
    /// apart, as they stand on pages of their own: damage in one loses nothing of another.
    /// </summary>
    /// <param name="from">The damaged file.</param>
    /// <param name="into">The new one.</param>
    public static void Copy(SqliteConnection from, SqliteConnection into)
    {
        List<long> begun = [];
        List<(long First, long Last)> imported = [];
        foreach (var show in Read(from, "SELECT id, first, last, title, offset, chapters FROM show ORDER BY id"))
        {
            into.Run(
                "INSERT OR IGNORE INTO show (id, first, last, title, offset, chapters) VALUES ($1, $2, $3, $4, $5, $6)", show);
            if (show is [_, long first and <= 0, long last and <= 0, ..])
                imported.Add((first, last));
            else if (show[1] is long own)
                begun.Add(own);
        }

        foreach (var row in Read(from, "SELECT givens, notes FROM note").Where(IsNotes))
            into.Run("INSERT OR IGNORE INTO note VALUES ($1, $2)", row);

        CopyOwn(from, into, begun);
        foreach (var (first, last) in imported)
            CopyImported(from, into, first, last);
    }

    private static void CopyOwn(SqliteConnection from, SqliteConnection into, IEnumerable<long> begun)
    {
        // To the damage; behind it a show is whole from its beginning on, and may be followed by damage again.
        var last = 0L;
        foreach (var start in begun.Order().Prepend(1))
        {
            if (start <= last)
                continue;
            foreach (var row in Read(from, $"{Events} WHERE sequence >= $1 ORDER BY sequence", start).TakeWhile(IsEvent))
            {
                Keep(into, row);
                last = (long)row[0]!;
            }
        }

        // Where shows begin may be lost too: then the last one that is whole to the end tells it itself.
        var behind = Read(from, $"{Events} WHERE sequence > $1 ORDER BY sequence DESC", last).TakeWhile(IsEvent).ToList();
        var first = behind.FindLastIndex(row => row[2] is Begins);
        foreach (var row in behind.Take(first + 1).Reverse())
            Keep(into, row);
    }

    // Whole or not at all.
    private static void CopyImported(SqliteConnection from, SqliteConnection into, long first, long last)
    {
        var rows = Read(from, $"{Events} WHERE sequence BETWEEN $1 AND $2 ORDER BY sequence", first, last).TakeWhile(IsEvent).ToList();
        if (rows.Count != last - first + 1)
            return;
        foreach (var row in rows)
            Keep(into, row);
    }

    private static void Keep(SqliteConnection into, object?[] row) => into.Run("INSERT OR IGNORE INTO event VALUES ($1, $2, $3, $4)", row);

    /// <summary>Has the shows name what is there: each begins at an event, and imported ones are whole or gone.</summary>
    /// <param name="into">The new file.</param>
    public static void NameShows(SqliteConnection into) => into.Run($"""
        DELETE FROM show WHERE first <= 0 AND last NOT IN (SELECT sequence FROM event);
        DELETE FROM show WHERE first NOT IN (SELECT sequence FROM event);
        DELETE FROM event WHERE sequence <= 0 AND NOT EXISTS (SELECT 1 FROM show WHERE sequence BETWEEN first AND last);
        INSERT OR IGNORE INTO show (first) SELECT sequence FROM event WHERE sequence > 0 AND kind = '{Begins}' ORDER BY sequence;
        INSERT OR IGNORE INTO show (first) SELECT min(sequence) FROM event WHERE sequence > 0 HAVING count(*) > 0;
        """);

    // What stands in a damaged page may be anything.
    private static bool IsEvent(object?[] row) => CanBeRead(() => EventText.Read(new((string)row[2]!, (string)row[3]!)));

    private static bool IsNotes(object?[] row) =>
        CanBeRead(() => StepNotesText.Read((string)row[1]!)) && row[0] is string { Length: Companion.Engine.Cell.Count };

    private static bool CanBeRead(Action read)
    {
        try
        {
            read();
            return true;
        }
        catch (Exception damage) when (damage is FormatException or InvalidCastException)
        {
            return false;
        }
    }

    private static IEnumerable<object?[]> Read(SqliteConnection from, string query, params object?[] values)
    {
        using var select = from.Command(query, values);
        SqliteDataReader? rows = null;
        try
        {
            while (Next() is { } row)
                yield return row;
        }
        finally
        {
            rows?.Dispose();
        }

        object?[]? Next()
        {
            try
            {
                rows ??= select.ExecuteReader();
                if (!rows.Read())
                    return null;
                var row = new object[rows.FieldCount];
                rows.GetValues(row);
                return row;
            }
            catch (SqliteException)
            {
                return null;
            }
        }
    }
}
