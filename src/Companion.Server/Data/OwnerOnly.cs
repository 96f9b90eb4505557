namespace Companion.Server.Data;

/// <summary>
/// Files and folders that only their owner may read: modes 0600 and 0700 on Unix. Windows has no such modes; there the user's local
/// application data folder, where these lie unless another folder is named, is closed to other users already.
/// </summary>
internal static class OwnerOnly
{
    private const UnixFileMode File600 = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const UnixFileMode Folder700 = File600 | UnixFileMode.UserExecute;

    /// <summary>Makes the folder where it is not there yet; one that is there keeps its mode.</summary>
    /// <param name="path">Its path.</param>
    public static void MakeFolder(string path)
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(path);
        else if (!Directory.Exists(path))
            Directory.CreateDirectory(path, Folder700);
    }

    /// <summary>Whether others than the owner may look into the folder or write in it.</summary>
    /// <param name="path">Its path.</param>
    public static bool IsOpenToOthers(string path) =>
        !OperatingSystem.IsWindows() && (File.GetUnixFileMode(path) & ~Folder700) != 0;

    /// <summary>Makes an empty file where there is none and closes one that is there to others, before anything is written into it.</summary>
    /// <param name="path">Its path.</param>
    public static void MakeFile(string path)
    {
        Open(path, FileMode.OpenOrCreate, FileShare.ReadWrite).Dispose();
        Close(path);
    }

    /// <summary>Closes a file to others.</summary>
    /// <param name="path">Its path.</param>
    public static void Close(string path)
    {
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(path, File600);
    }

    /// <summary>Opens a file for reading and writing; a new one is closed to others from the start.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="mode">How.</param>
    /// <param name="share">What others may do meanwhile.</param>
    public static FileStream Open(string path, FileMode mode, FileShare share)
    {
        var options = new FileStreamOptions { Mode = mode, Access = FileAccess.ReadWrite, Share = share };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = File600;
        return new FileStream(path, options);
    }

    /// <summary>Writes a whole file, or leaves the old one as it is if that fails half-way.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="content">What it holds from now on.</param>
    public static void Replace(string path, ReadOnlySpan<byte> content)
    {
        var draft = path + ".new";
        using (var file = Open(draft, FileMode.Create, FileShare.None))
        {
            file.Write(content);
            file.Flush(flushToDisk: true);
        }

        File.Move(draft, path, overwrite: true);
    }
}
