using System.Globalization;
using Companion.Server.Data;
using Companion.Session.Events;
using Companion.Session.Events.Storage;
using Microsoft.Data.Sqlite;

namespace Companion.Server.Log;

/// <summary>
/// The event log as an SQLite file: one line an event, only ever added to. A write-ahead log with <c>synchronous=FULL</c> has each
/// entry on the disk before it is acknowledged, at some thousand entries a second, far more than a presenter makes.
/// </summary>
internal sealed class SqliteEventLog : IEventLog, IDisposable
{
    // Counts up when the table changes; an older program then refuses the file instead of misreading it.
    private const int Layout = 1;

    private readonly SqliteConnection _connection;
    private readonly string _path;

    private SqliteEventLog(SqliteConnection connection, string path) => (_connection, _path) = (connection, path);

    /// <summary>Opens the log of a data folder, which is made where there is none.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="PlainException">The file is no event log, or a newer version's.</exception>
    public static SqliteEventLog Open(DataFolder folder)
    {
        // SQLite gives the files it makes beside this one the same mode.
        OwnerOnly.MakeFile(folder.Events);
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = folder.Events,
            Pooling = false,
            DefaultTimeout = 2, // seconds; the presenter waits for it
        }.ToString());
        var log = new SqliteEventLog(connection, folder.Events);
        try
        {
            connection.Open();
            log.Prepare();
            return log;
        }
        catch (SqliteException damage)
        {
            log.Dispose();
            throw new PlainException(
                $"The event log {folder.Events} cannot be opened: move it away, and a new one is made.", damage);
        }
        catch (PlainException)
        {
            log.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public IEnumerable<Event> Replay()
    {
        using var select = Command("SELECT sequence, kind, body FROM event ORDER BY sequence");
        using var rows = select.ExecuteReader();
        while (rows.Read())
            yield return Read(rows.GetInt64(0), new(rows.GetString(1), rows.GetString(2)));
    }

    /// <inheritdoc/>
    public void Append(long after, IReadOnlyList<Event> events)
    {
        try
        {
            using var transaction = _connection.BeginTransaction();
            using var insert = Command("INSERT INTO event (sequence, at, kind, body) VALUES ($sequence, $at, $kind, $body)");
            insert.Transaction = transaction;
            for (var index = 0; index < events.Count; index++)
                Insert(insert, after + 1 + index, events[index]);
            transaction.Commit();
        }
        catch (SqliteException failure)
        {
            throw new IOException($"The event log {_path} could not be written.", failure);
        }
    }

    /// <summary>Closes the file.</summary>
    public void Dispose() => _connection.Dispose();

    private static void Insert(SqliteCommand insert, long number, Event happened)
    {
        var stored = EventText.Write(happened);
        insert.Parameters.Clear();
        insert.Parameters.AddWithValue("$sequence", number);
        insert.Parameters.AddWithValue("$at", happened.At.UtcTicks);
        insert.Parameters.AddWithValue("$kind", stored.Kind);
        insert.Parameters.AddWithValue("$body", stored.Body);
        insert.ExecuteNonQuery();
    }

    private Event Read(long number, StoredEvent stored)
    {
        try
        {
            return EventText.Read(stored);
        }
        catch (FormatException fault)
        {
            throw new PlainException(
                $"Event {number} of {_path} cannot be read ({fault.Message}): start the version that wrote it, or name another folder with --data.",
                fault);
        }
    }

    private void Prepare()
    {
        Run("PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL");
        using var read = Command("PRAGMA user_version");
        var layout = Convert.ToInt32(read.ExecuteScalar(), CultureInfo.InvariantCulture);
        if (layout > Layout)
        {
            throw new PlainException(
                $"The event log {_path} was written by a newer version: start that one, or name another folder with --data.");
        }

        if (layout < Layout)
        {
            Run($"""
                BEGIN;
                CREATE TABLE event (sequence INTEGER PRIMARY KEY, at INTEGER NOT NULL, kind TEXT NOT NULL, body TEXT NOT NULL);
                PRAGMA user_version={Layout};
                COMMIT
                """);
        }
    }

    private void Run(string statements)
    {
        using var command = Command(statements);
        command.ExecuteNonQuery();
    }

    private SqliteCommand Command(string text)
    {
        var command = _connection.CreateCommand();
        command.CommandText = text;
        return command;
    }
}
