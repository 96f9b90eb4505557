using System.Collections.Immutable;
using System.Text;

namespace Companion.Server.Data;

/// <summary>
/// A file that a command is to write: it is there whole or not at all. What goes into it is made first, then written under another
/// name in the same folder, flushed to the disk and renamed, so that whoever ends the program half-way finds the folder as it was.
/// </summary>
internal sealed class OutputFile
{
    private readonly string _path;
    private readonly string _option;

    private readonly string _asked;
    private readonly bool _isPrivate;

    private OutputFile(string path, string option, bool isPrivate) =>
        (_asked, _path, _option, _isPrivate) = (path, TargetOf(path), option, isPrivate);

    /// <summary>Says where to write, before the work for it is begun.</summary>
    /// <param name="path">The file, which may be there already; a link is followed.</param>
    /// <param name="option">The option by which it was named.</param>
    /// <param name="isPrivate">Whether it is closed to other users, even where it was open before.</param>
    /// <exception cref="PlainException">It cannot be written: its folder is not there, or it is a folder.</exception>
    public static OutputFile At(string path, string option, bool isPrivate = false)
    {
        if (path.Length == 0)
            throw new PlainException($"{option} names no file: give it a name.");
        var file = new OutputFile(path, option, isPrivate);
        return Directory.Exists(file._path) || !Directory.Exists(Path.GetDirectoryName(file._path))
            ? throw file.NotWritten(null)
            : file;
    }

    /// <summary>Says where to write several, before the work for them is begun.</summary>
    /// <param name="files">The files with the options by which they were named; null for those that were not.</param>
    /// <returns>The files in this order, null where there is none.</returns>
    /// <exception cref="PlainException">One cannot be written, or two are the same.</exception>
    public static ImmutableArray<OutputFile?> AllOf(params ReadOnlySpan<(string? Path, string Option)> files)
    {
        var all = ImmutableArray.CreateBuilder<OutputFile?>(files.Length);
        foreach (var (path, option) in files)
        {
            var file = path is null ? null : At(path, option);
            if (file is not null && !IsDeviceName(file._path) && all.FirstOrDefault(other => other?._path == file._path) is { } same)
                throw new PlainException($"{same._option} and {option} name the same file {path}: give each a file of its own.");
            all.Add(file);
        }

        return all.ToImmutable();
    }

    /// <summary>Writes the file.</summary>
    /// <param name="content">All of it.</param>
    /// <param name="cancel">Leaves what was there before.</param>
    /// <exception cref="PlainException">It cannot be written; what was there before still is.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public void Write(ReadOnlySpan<byte> content, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        try
        {
            if (IsDevice())
                Through(content);
            else
                Replace(content);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw NotWritten(fault);
        }
    }

    /// <summary>Writes the file as text, in UTF-8.</summary>
    /// <param name="content">All of it.</param>
    /// <param name="cancel">Leaves what was there before.</param>
    /// <exception cref="PlainException">It cannot be written; what was there before still is.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public void Write(string content, CancellationToken cancel) => Write(Encoding.UTF8.GetBytes(content), cancel);

    /// <summary>Those files that were named, each with what makes its content.</summary>
    /// <param name="files">The files, null where there is none.</param>
    /// <param name="writers">What makes their contents, in the same order.</param>
    public static ImmutableArray<(OutputFile File, Func<byte[]> Content)> Named(IEnumerable<OutputFile?> files, IEnumerable<Func<byte[]>> writers) =>
        [.. files.Zip(writers).Where(each => each.First is not null).Select(each => (each.First!, each.Second))];

    /// <summary>Writes several files, all of which are made before the first is written: who stops it finds none of them.</summary>
    /// <param name="files">The files, each with what makes its content.</param>
    /// <param name="made">Told how many were made.</param>
    /// <param name="cancel">Leaves what was there before.</param>
    /// <exception cref="PlainException">One cannot be written; those before it are.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static void WriteAll(IReadOnlyList<(OutputFile File, Func<byte[]> Content)> files, IProgress<long>? made, CancellationToken cancel)
    {
        var contents = new List<byte[]>(files.Count);
        foreach (var (_, content) in files)
        {
            cancel.ThrowIfCancellationRequested();
            contents.Add(content());
            made?.Report(contents.Count);
        }

        cancel.ThrowIfCancellationRequested();
        foreach (var ((file, _), content) in files.Zip(contents))
            file.Write(content, CancellationToken.None);
    }

    /// <summary>Says that it was written; not where it is a device, which may be the very place where this is said.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="done">What was done, as in "Written".</param>
    public void Report(TextWriter output, string done = "Written")
    {
        if (!IsDevice())
            output.WriteLine($"{done} to {this}.");
    }

    /// <summary>The name, without its end, of files that are to stand beside it and belong to it; null where it is a device.</summary>
    public string? Stem => IsDevice() ? null : Path.GetFileNameWithoutExtension(_asked);

    /// <summary>A file of this name in its folder.</summary>
    /// <param name="name">The name.</param>
    /// <exception cref="PlainException">It cannot be written.</exception>
    public OutputFile Beside(string name) => At(Path.Combine(Path.GetDirectoryName(_asked) ?? "", name), _option);

    /// <summary>Its name as it was given.</summary>
    public override string ToString() => _asked;

    private static string TargetOf(string path)
    {
        var file = new FileInfo(path);
        return file.LinkTarget is null || IsDeviceName(file.FullName)
            ? file.FullName
            : file.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? file.FullName;
    }

    private static bool IsDeviceName(string path) => path.StartsWith("/dev/", StringComparison.Ordinal);

    // A terminal, a pipe, nowhere: there is nothing to rename.
    private bool IsDevice()
    {
        if (IsDeviceName(_path))
            return true;
        if (!File.Exists(_path))
            return false;
        using var there = File.Open(_path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);
        return !there.CanSeek;
    }

    private void Through(ReadOnlySpan<byte> content)
    {
        using var file = File.Open(_path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);
        file.Write(content);
    }

    private void Replace(ReadOnlySpan<byte> content)
    {
        var draft = $"{_path}.{Path.GetRandomFileName()}";
        try
        {
            using (var file = new FileStream(draft, LikeTheOneBefore()))
            {
                file.Write(content);
                file.Flush(flushToDisk: true);
            }

            File.Move(draft, _path, overwrite: true);
        }
        catch
        {
            File.Delete(draft);
            throw;
        }
    }

    // Who could not read it before cannot read it afterwards.
    private FileStreamOptions LikeTheOneBefore()
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None };
        if (OperatingSystem.IsWindows())
            return options;
        if (_isPrivate)
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        else if (File.Exists(_path))
            options.UnixCreateMode = File.GetUnixFileMode(_path);
        return options;
    }

    private PlainException NotWritten(Exception? fault) =>
        new($"The file {_asked} cannot be written: name another one with {_option}.", fault);
}
