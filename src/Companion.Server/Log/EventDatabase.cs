using System.Globalization;
using Companion.Server.Data;
using Microsoft.Data.Sqlite;

namespace Companion.Server.Log;

/// <summary>
/// The SQLite file of the events and the shows. <c>event</c> holds an event a line and is only ever added to: what happened here has
/// the numbers from 1 on, shows that were imported have numbers of 0 and below. <c>show</c> says at which event each show begins, and
/// keeps what is no event: a title given later, the recording's offset, edited chapters, and a digest of shows that are over. The notes
/// of puzzles outlive the show in which they were written: see <see cref="NoteTable"/>.
/// </summary>
internal static class EventDatabase
{
    // Counts up when a table changes; an older program then refuses the file instead of misreading it.
    private const int Layout = 3;

    private const string Events =
        "CREATE TABLE event (sequence INTEGER PRIMARY KEY, at INTEGER NOT NULL, kind TEXT NOT NULL, body TEXT NOT NULL);";

    private const string Shows = """
        CREATE TABLE show (
            id INTEGER PRIMARY KEY, first INTEGER NOT NULL UNIQUE, last INTEGER, title TEXT, offset REAL NOT NULL DEFAULT 0,
            chapters TEXT, digest TEXT);
        INSERT INTO show (first) SELECT min(sequence) FROM event HAVING count(*) > 0;
        """;

    /// <summary>Opens the file of a data folder, which is made where there is none and brought up to this layout.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="PlainException">The file was written by a newer version.</exception>
    /// <exception cref="SqliteException">The file is damaged, or none of these.</exception>
    public static SqliteConnection Open(DataFolder folder)
    {
        // SQLite gives the files it makes beside this one the same mode.
        OwnerOnly.MakeFile(folder.Events);
        return Open(folder.Events);
    }

    /// <summary>The same of a file that is there.</summary>
    /// <param name="path">Its path.</param>
    public static SqliteConnection Open(string path)
    {
        var connection = Connect(path);
        try
        {
            Prepare(connection, path);
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>Connects to a file as it is.</summary>
    /// <param name="path">Its path.</param>
    public static SqliteConnection Connect(string path)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Pooling = false,
            DefaultTimeout = 2, // seconds; the presenter waits for it
        }.ToString());
        try
        {
            connection.Open();
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>A command with its parameters in order, as <c>$1</c>, <c>$2</c> and so on.</summary>
    public static SqliteCommand Command(this SqliteConnection connection, string text, params ReadOnlySpan<object?> values)
    {
        var command = connection.CreateCommand();
        command.CommandText = text;
        for (var index = 0; index < values.Length; index++)
            command.Parameters.AddWithValue(string.Create(CultureInfo.InvariantCulture, $"${index + 1}"), values[index] ?? DBNull.Value);
        return command;
    }

    /// <summary>Runs statements that answer nothing.</summary>
    public static void Run(this SqliteConnection connection, string statements, params ReadOnlySpan<object?> values)
    {
        using var command = connection.Command(statements, values);
        command.ExecuteNonQuery();
    }

    /// <summary>The one number that a statement answers, or null.</summary>
    public static long? Number(this SqliteConnection connection, string statement, params ReadOnlySpan<object?> values)
    {
        using var command = connection.Command(statement, values);
        return command.ExecuteScalar() is long number ? number : null;
    }

    // A write-ahead log with synchronous=FULL has each entry on the disk before it is acknowledged, at some thousand entries a second,
    // far more than a presenter makes.
    private static void Prepare(SqliteConnection connection, string path)
    {
        connection.Run("PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL");
        var layout = connection.Number("PRAGMA user_version");
        if (layout > Layout)
        {
            throw new PlainException(
                $"The event log {path} was written by a newer version: start that one, or name another folder with --data.");
        }

        if (layout < Layout)
            BringUp(connection);
    }

    private static void BringUp(SqliteConnection connection)
    {
        // Another program may have done it since the layout was looked at.
        using var transaction = connection.BeginTransaction();
        var layout = connection.Number("PRAGMA user_version");
        if (layout == 0)
            connection.Run(Events);
        if (layout < 2)
            connection.Run(Shows);
        if (layout < Layout)
        {
            connection.Run(NoteTable.Layout);
            NoteTable.Gather(connection);
            connection.Run($"PRAGMA user_version={Layout}");
        }

        transaction.Commit();
    }
}
