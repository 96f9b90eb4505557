using Companion.Session.Events;
using Companion.Session.Events.Storage;
using Microsoft.Data.Sqlite;

namespace Companion.Browser.Tests.Following;

/// <summary>The log that a running companion keeps.</summary>
internal static class KeptLog
{
    /// <summary>What was entered since the last puzzle was loaded, without times; what the session finds out by itself is left out.</summary>
    public static IReadOnlyList<Event> Entries(string folder)
    {
        var file = Directory.GetFiles(folder, "*.db").Single();
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
        connection.Open();
        using var select = connection.CreateCommand();
        select.CommandText = "SELECT kind, body FROM event ORDER BY sequence";
        using var row = select.ExecuteReader();
        List<Event> entries = [];
        while (row.Read())
        {
            var happened = EventText.Read(new(row.GetString(0), row.GetString(1)));
            if (happened is PuzzleLoaded)
                entries.Clear();
            else if (happened is not (EntryAttributed or MarksSettled))
                entries.Add(happened with { At = default });
        }

        return entries;
    }
}
