using Companion.Server.Data;
using Companion.Session.Events.Storage;
using Companion.Session.Shows;
using Companion.Session.Shows.Files;
using Microsoft.Data.Sqlite;

namespace Companion.Server.Log;

/// <summary>
/// The shows in the <see cref="EventDatabase"/>, read and written beside the running session. Each call has a connection of its own,
/// so that several may call at once.
/// </summary>
/// <param name="folder">The data folder.</param>
internal sealed class ShowTable(DataFolder folder)
{
    /// <summary>All shows that hold an event, by their numbers.</summary>
    public List<ShowRow> All() => With(connection =>
    {
        using var select = connection.Command("""
            SELECT id, first, title, offset, chapters, digest,
                coalesce(last, (SELECT min(next.first) - 1 FROM show next WHERE next.first > show.first), (SELECT max(sequence) FROM event)),
                first > 0 AND first = (SELECT max(first) FROM show)
            FROM show ORDER BY id
            """);
        using var rows = select.ExecuteReader();
        var all = new List<ShowRow>();
        while (rows.Read())
        {
            all.Add(new(
                rows.GetInt32(0), rows.GetInt64(1), rows.GetInt64(6), Text(2), rows.GetDouble(3), Text(4), Text(5), rows.GetBoolean(7)));
        }

        return all;

        string? Text(int column) => rows.IsDBNull(column) ? null : rows.GetString(column);
    });

    /// <summary>The events of a show as the log keeps them, with their times in ticks of UTC.</summary>
    /// <param name="row">The show.</param>
    public List<(long Ticks, StoredEvent Stored)> Events(ShowRow row) => With(connection =>
    {
        using var select = connection.Command("SELECT at, kind, body FROM event WHERE sequence BETWEEN $1 AND $2 ORDER BY sequence", row.First, row.Last);
        using var rows = select.ExecuteReader();
        var events = new List<(long, StoredEvent)>();
        while (rows.Read())
            events.Add((rows.GetInt64(0), new(rows.GetString(1), rows.GetString(2))));
        return events;
    });

    /// <summary>Keeps the digest of a show that is over.</summary>
    public void KeepDigest(int id, string digest) => Change("UPDATE show SET digest = $1 WHERE id = $2", digest, id);

    /// <summary>Sets the offset of a show's recording, in seconds.</summary>
    /// <exception cref="PlainException">There is no such show.</exception>
    public void SetOffset(int id, double seconds) => Change("UPDATE show SET offset = $1 WHERE id = $2", seconds, id);

    /// <summary>Sets a show's edited chapters, as JSON; null for none.</summary>
    /// <exception cref="PlainException">There is no such show.</exception>
    public void SetChapters(int id, string? chapters) => Change("UPDATE show SET chapters = $1 WHERE id = $2", chapters, id);

    /// <summary>Adds the show of a file, all or nothing.</summary>
    /// <param name="show">The show, replayed.</param>
    /// <param name="file">The same as the file holds it.</param>
    /// <returns>Its number.</returns>
    public int Insert(StoredShow show, ShowFile file) => With(connection =>
    {
        using var transaction = connection.BeginTransaction();
        var first = Math.Min(connection.Number("SELECT min(sequence) FROM event") ?? 1, 1) - file.Events.Length;
        // From the last on: each goes before all others. The other way round what happened here would have to make room again and again,
        // on pages ever further back in the file, where a cut would lose it.
        for (var index = file.Events.Length - 1; index >= 0; index--)
        {
            var (at, stored) = (show.Events[index].At.UtcTicks, file.Events[index]);
            connection.Run("INSERT INTO event VALUES ($1, $2, $3, $4)", first + index, at, stored.Kind, stored.Body);
        }

        connection.Run(
            "INSERT INTO show (first, last, title, offset, chapters) VALUES ($1, $2, $3, $4, $5)",
            first,
            first + file.Events.Length - 1,
            file.Title,
            file.Offset.TotalSeconds,
            ShowRow.WriteChapters(file.Chapters));
        var id = connection.Number("SELECT last_insert_rowid()")!.Value;
        transaction.Commit();
        return (int)id;
    });

    private void Change(string update, object? value, int id) => With(connection =>
    {
        using var command = connection.Command(update, value, id);
        return command.ExecuteNonQuery() == 1 ? true : throw new PlainException($"There is no show {id}: 'companion shows' lists them.");
    });

    private T With<T>(Func<SqliteConnection, T> work)
    {
        try
        {
            using var connection = EventDatabase.Open(folder);
            return work(connection);
        }
        catch (SqliteException failure)
        {
            throw new PlainException(
                $"The event log {folder.Events} cannot be read or written now: try again, or start the companion, which mends it.", failure);
        }
    }
}
