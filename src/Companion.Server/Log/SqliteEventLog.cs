using Companion.Server.Data;
using Companion.Session;
using Companion.Session.Events;
using Companion.Session.Events.Storage;
using Companion.Session.Planning;
using Companion.Session.State;
using Microsoft.Data.Sqlite;

namespace Companion.Server.Log;

/// <summary>The event log of the session in an <see cref="EventDatabase"/>.</summary>
internal sealed class SqliteEventLog : IEventLog, IDisposable
{
    private readonly SqliteConnection _connection;
    private readonly string _path;

    private SqliteEventLog(SqliteConnection connection, string path) => (_connection, _path) = (connection, path);

    /// <inheritdoc/>
    public string? Warning { get; private init; }

    /// <summary>Opens the log of a data folder, which is made where there is none.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="PlainException">The file is no event log, a newer version's or damaged.</exception>
    public static SqliteEventLog Open(DataFolder folder)
    {
        try
        {
            return new(EventDatabase.Open(folder), folder.Events);
        }
        catch (SqliteException damage)
        {
            throw Unusable(folder, damage);
        }
    }

    /// <summary>
    /// Opens the log of a data folder that was taken for this program. Of a damaged file what can be read is put into a new one, and
    /// the damaged one is kept beside it.
    /// </summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="PlainException">The file is no event log, or a newer version's.</exception>
    public static SqliteEventLog OpenOrSalvage(DataFolder folder)
    {
        SqliteException? damage = null;
        if (!Salvage.HasNoPage(folder))
        {
            var isCut = Salvage.EndsWithinPage(folder);
            try
            {
                var connection = EventDatabase.Open(folder);
                if (!isCut && Salvage.IsSound(connection))
                    return new(connection, folder.Events);
                connection.Dispose();
            }
            catch (SqliteException fault)
            {
                damage = fault;
            }
        }

        if (!Salvage.IsPossible(folder))
            throw Unusable(folder, damage);
        var warning = Salvage.Run(folder);
        return new(EventDatabase.Open(folder), folder.Events) { Warning = warning };
    }

    /// <inheritdoc/>
    public SessionState Restore()
    {
        var first = _connection.Number("SELECT max(first) FROM show WHERE first > 0") ?? 1;
        return Replay(first).Aggregate(SessionState.Initial with { Sequence = first - 1 }, Evolver.Evolve);
    }

    /// <summary>The events from a number on, in order.</summary>
    /// <param name="from">The number of the first; 1 for all that happened here.</param>
    /// <exception cref="PlainException">An event is damaged or of a kind that only a newer version knows.</exception>
    public IEnumerable<Event> Replay(long from = 1)
    {
        using var select = _connection.Command("SELECT sequence, kind, body FROM event WHERE sequence >= $1 ORDER BY sequence", from);
        using var rows = select.ExecuteReader();
        while (rows.Read())
            yield return Read(rows.GetInt64(0), new(rows.GetString(1), rows.GetString(2)));
    }

    /// <inheritdoc/>
    public void Append(long after, IReadOnlyList<Event> events, PuzzleNotes? notes = null)
    {
        try
        {
            using var transaction = _connection.BeginTransaction();
            for (var index = 0; index < events.Count; index++)
                Insert(after + 1 + index, events[index]);
            if (notes is not null)
                NoteTable.Keep(_connection, notes);
            transaction.Commit();
        }
        catch (SqliteException failure)
        {
            throw new IOException($"The event log {_path} could not be written.", failure);
        }
    }

    /// <inheritdoc/>
    public ValueArray<StepNote>? NotesOf(string givens)
    {
        try
        {
            return NoteTable.Of(_connection, givens);
        }
        catch (Exception failure) when (failure is SqliteException or FormatException)
        {
            throw new IOException($"The notes of a puzzle in {_path} could not be read.", failure);
        }
    }

    /// <summary>Closes the file.</summary>
    public void Dispose() => _connection.Dispose();

    private static PlainException Unusable(DataFolder folder, SqliteException? damage) => new(
        $"The event log {folder.Events} cannot be opened: move it away, and a new one is made.", damage);

    private void Insert(long number, Event happened)
    {
        var stored = EventText.Write(happened);
        _connection.Run("INSERT INTO event VALUES ($1, $2, $3, $4)", number, happened.At.UtcTicks, stored.Kind, stored.Body);
        if (happened is ShowBegun || number == 1)
            _connection.Run("INSERT INTO show (first) VALUES ($1)", number);
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
}
