using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Session.State;

namespace Companion.Server.CommandLine;

/// <summary>The session that a data folder holds, as it was left.</summary>
internal static class StoredSession
{
    /// <summary>Reads it from the event log.</summary>
    /// <param name="data">The folder, or null for the usual one.</param>
    /// <param name="instead">What to do where there is none, as in "give a grid".</param>
    /// <exception cref="PlainException">There is no session.</exception>
    public static SessionState Read(string? data, string instead)
    {
        var folder = DataFolder.Open(data);
        if (!File.Exists(folder.Events))
            throw new PlainException($"There is no session in {folder.Path}: {instead}, or name the folder with --data.");
        using var log = SqliteEventLog.Open(folder);
        return log.Restore();
    }
}
