namespace Companion.Server.Data;

/// <summary>The folder that holds a presenter's keys, event log, settings and log files, closed to other users.</summary>
/// <param name="Path">Where it is.</param>
public sealed record DataFolder(string Path)
{
    // The keys, an empty event log and the first lines of a log file take some 100 kB.
    private const long LeastRoom = 1_000_000;

    /// <summary>The usual name of an audience server's folder, which may run beside the presenter's.</summary>
    public const string UsualForAudience = "companion-audience";

    /// <summary>The keys of access.</summary>
    public string Keys => In("keys.json");

    /// <summary>The event log.</summary>
    public string Events => In("events.db");

    /// <summary>The presenter's own settings, which may be absent.</summary>
    public string Settings => In("companion.json");

    /// <summary>The presenter's own ladder, which may be absent.</summary>
    public string Ladder => In("ladder.json");

    /// <summary>The password of the chat's account or server, which may be absent.</summary>
    public string ChatPassword => In("chat-password");

    /// <summary>The shared secret of the chat's HTTP way in, which may be absent.</summary>
    public string ChatSecret => In("chat-secret");

    /// <summary>The password of the relay's Redis server, which may be absent.</summary>
    public string RedisPassword => In("redis-password");

    /// <summary>The folder of the program's log files.</summary>
    public string Logs => In("logs");

    /// <summary>Whether other users may look into it or write in it, as in a folder that was there before.</summary>
    public bool IsOpenToOthers => OwnerOnly.IsOpenToOthers(Path);

    /// <summary>The folder, be it there or not; null where none is named and the user has no place for one.</summary>
    /// <param name="path">Where; null for the usual place, as in <see cref="Open"/>.</param>
    /// <param name="usual">Its usual name.</param>
    public static DataFolder? Find(string? path, string usual = "companion") =>
        (path ?? Usual(usual)) is { } where ? new(System.IO.Path.GetFullPath(where)) : null;

    /// <summary>Opens the folder, which is made where it is not there.</summary>
    /// <param name="path">Where; null for the usual name in the user's local application data folder.</param>
    /// <param name="usual">The usual name.</param>
    /// <exception cref="PlainException">It cannot be made.</exception>
    public static DataFolder Open(string? path, string usual = "companion")
    {
        var folder = Find(path, usual)
            ?? throw new PlainException("This user has no folder for application data: name a folder with --data.");
        try
        {
            OwnerOnly.MakeFolder(folder.Path);
            return folder;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new PlainException($"The data folder {folder.Path} cannot be made: name another one with --data.", failure);
        }
    }

    /// <summary>Takes the folder for one program until what is returned is disposed; the system frees it when the program dies.</summary>
    /// <exception cref="PlainException">Another companion has it, or its disk is full.</exception>
    public IDisposable Take()
    {
        // Entries are refused while the disk is full, but a start needs some files.
        if (new DriveInfo(Path).AvailableFreeSpace < LeastRoom)
            throw new PlainException($"The disk of {Path} is full: free some space, then start again.");
        try
        {
            return OwnerOnly.Open(In("lock"), FileMode.OpenOrCreate, FileShare.None);
        }
        catch (IOException taken)
        {
            throw new PlainException(
                $"Another companion is running on {Path}: stop that one, or name another folder with --data.", taken);
        }
        catch (UnauthorizedAccessException closed)
        {
            throw new PlainException($"The data folder {Path} cannot be written: name another one with --data.", closed);
        }
    }

    private static string? Usual(string name)
    {
        var local = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData);
        return local.Length > 0 ? System.IO.Path.Combine(local, name) : null;
    }

    private string In(string name) => System.IO.Path.Combine(Path, name);
}
