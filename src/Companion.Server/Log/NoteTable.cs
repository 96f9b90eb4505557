using Companion.Session;
using Companion.Session.Events;
using Companion.Session.Events.Storage;
using Companion.Session.Planning;
using Companion.Session.State;
using Microsoft.Data.Sqlite;

namespace Companion.Server.Log;

/// <summary>
/// The notes of puzzles in the <see cref="EventDatabase"/>: for each puzzle those that were written last, in whichever show. Each show
/// has its own as events too; here they are found when the puzzle is loaded again.
/// </summary>
internal static class NoteTable
{
    /// <summary>The table: a puzzle by its 81 givens, and its notes as <see cref="StepNotesText"/>; none left is an empty list.</summary>
    public const string Layout = "CREATE TABLE note (givens TEXT PRIMARY KEY, notes TEXT NOT NULL) WITHOUT ROWID;";

    /// <summary>The notes of a puzzle; null where none were ever written.</summary>
    /// <param name="connection">The file.</param>
    /// <param name="givens">The puzzle, 81 characters.</param>
    /// <exception cref="FormatException">They cannot be read.</exception>
    public static ValueArray<StepNote>? Of(SqliteConnection connection, string givens)
    {
        using var select = connection.Command("SELECT notes FROM note WHERE givens = $1", givens);
        return select.ExecuteScalar() is string text ? StepNotesText.Read(text) : null;
    }

    /// <summary>Keeps the notes of a puzzle in place of those before.</summary>
    /// <param name="connection">The file.</param>
    /// <param name="notes">The notes.</param>
    public static void Keep(SqliteConnection connection, PuzzleNotes notes) => connection.Run(
        "INSERT INTO note VALUES ($1, $2) ON CONFLICT (givens) DO UPDATE SET notes = excluded.notes", notes.Givens, StepNotesText.Write(notes.Notes));

    /// <summary>Collects from the shows what was noted in them, for puzzles whose notes are not kept yet. A show that cannot be read is left out.</summary>
    /// <param name="connection">The file.</param>
    public static void Gather(SqliteConnection connection)
    {
        var last = new Dictionary<string, PuzzleNotes>();
        foreach (var show in Shows(connection))
        {
            try
            {
                foreach (var notes in NotesIn(show))
                    last[notes.Givens] = notes;
            }
            catch (FormatException)
            {
                // Its events are still there for the version that wrote them.
            }
        }

        foreach (var notes in last.Values)
        {
            connection.Run(
                "INSERT INTO note VALUES ($1, $2) ON CONFLICT (givens) DO NOTHING", notes.Givens, StepNotesText.Write(notes.Notes));
        }
    }

    // What happened here: the shows of others keep their notes to themselves.
    private static List<List<StoredEvent>> Shows(SqliteConnection connection)
    {
        using var select = connection.Command("""
            SELECT first, kind, body FROM (
                SELECT sequence, kind, body, (SELECT max(first) FROM show WHERE first <= sequence) AS first FROM event WHERE sequence > 0)
            WHERE first IN (
                SELECT (SELECT max(first) FROM show WHERE first <= sequence) FROM event WHERE sequence > 0 AND kind = 'step-noted')
            ORDER BY sequence
            """);
        using var rows = select.ExecuteReader();
        var (shows, show) = (new List<List<StoredEvent>>(), 0L);
        while (rows.Read())
        {
            if (show != rows.GetInt64(0))
                shows.Add([]);
            show = rows.GetInt64(0);
            shows[^1].Add(new(rows.GetString(1), rows.GetString(2)));
        }

        return shows;
    }

    private static IEnumerable<PuzzleNotes> NotesIn(List<StoredEvent> show)
    {
        var state = SessionState.Initial;
        foreach (var stored in show)
        {
            var happened = EventText.Read(stored);
            state = Evolver.Evolve(state, happened);
            if (happened is StepNoted or NotesRecalled)
                yield return state.Notes;
        }
    }
}
