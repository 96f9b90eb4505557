using System.Collections.Immutable;
using System.Globalization;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Session.Events;
using Companion.Session.Events.Storage;
using Companion.Session.Shows;
using Companion.Session.Shows.Files;

namespace Companion.Server.Shows;

/// <summary>
/// The shows that a data folder keeps. Reads beside the running session and never waits for it; may be used by several at once. Opening
/// a show and going through its <see cref="StoredShow.Moments"/> is all that anything made from a show needs.
/// </summary>
/// <param name="folder">The folder.</param>
public sealed partial class ShowLibrary(DataFolder folder)
{
    private readonly ShowTable _table = new(folder);

    /// <summary>The name of the show that goes on now, or went on last.</summary>
    public const string Latest = "latest";

    /// <summary>All shows, by their numbers. A show is read once when it is over; nothing is replayed.</summary>
    /// <exception cref="PlainException">The event log cannot be read.</exception>
    public ImmutableArray<ShowLine> List() => [.. _table.All().Select(row => Line(row, DigestOf(row)))];

    /// <summary>Whether a show was ended, so that the next puzzle begins another. Nothing is replayed.</summary>
    /// <param name="id">Its number.</param>
    /// <exception cref="PlainException">There is no such show, or it cannot be read.</exception>
    public bool IsOver(int id) =>
        _table.Events(RowOf(id.ToString(CultureInfo.InvariantCulture))).Exists(each => each.Stored.Kind == "show-ended");

    /// <summary>Opens a show: it is replayed, and each of its moments can be looked at.</summary>
    /// <param name="name">Its number, <see cref="Latest"/>, or the path of a show file.</param>
    /// <exception cref="PlainException">There is no such show, or it cannot be read.</exception>
    public OpenedShow Open(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (!IsNumber(name, out _) && name != Latest)
            return OpenFile(name);
        var row = RowOf(name);
        return Replay(row, [.. _table.Events(row).Select(each => each.Stored)]);
    }

    /// <summary>Reads a show file, all of it or as far as it goes.</summary>
    /// <param name="path">Its path.</param>
    /// <exception cref="PlainException">It is no show file.</exception>
    public static OpenedShow OpenFile(string path)
    {
        var reading = ShowFileReader.Read(ReadBytes(path, $"There is no show or readable show file '{path}': 'companion shows' lists the shows."));
        return reading is { Show: { } show, File: { } file }
            ? new(null, show, file, reading.Missing)
            : throw new PlainException($"{path}: {string.Join(' ', reading.Faults)}");
    }

    private static byte[] ReadBytes(string path, string otherwise)
    {
        try
        {
            // One byte more than there may be is enough to see that there are too many.
            using var file = File.OpenRead(path);
            var bytes = new byte[(int)Math.Min(file.Length, ShowFile.LargestBytes + 1L)];
            file.ReadExactly(bytes);
            return bytes;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new PlainException(otherwise, failure);
        }
    }

    // A show that is kept: what is corrected beside its events has no place in a file.
    private ShowRow RowOf(string name) => _table.All().Find(row => name == Latest ? row.IsLive : IsNumber(name, out var id) && row.Id == id)
        ?? throw new PlainException(name == Latest
            ? $"No show was kept in {folder.Path}: name the folder with --data."
            : $"There is no show {name}: 'companion shows' lists them.");

    private static bool IsNumber(string name, out int id) => int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out id);

    private static OpenedShow Replay(ShowRow row, ImmutableArray<StoredEvent> events)
    {
        var read = new List<Event>(events.Length);
        foreach (var stored in events)
        {
            try
            {
                read.Add(EventText.Read(stored));
            }
            catch (FormatException fault)
            {
                throw new PlainException(
                    $"Event {read.Count + 1} of show {row.Id} cannot be read ({fault.Message}): start the version that wrote it.", fault);
            }
        }

        var file = row.File(events);
        return new(row.Id, StoredShow.Replay(read, row.IsImported ? 0 : row.First - 1, file.Title, file.Offset), file, null);
    }

    private ShowDigest DigestOf(ShowRow row)
    {
        if (ShowDigest.Parse(row.Digest) is { } kept)
            return kept;
        var digest = ShowDigest.Of(_table.Events(row));
        if (!row.IsLive)
            _table.KeepDigest(row.Id, digest.ToText());
        return digest;
    }

    private static ShowLine Line(ShowRow row, ShowDigest digest) => new(
        row.Id,
        row.Title ?? (digest.Title is { Length: > 0 } given ? given : digest.Puzzles.FirstOrDefault("")),
        digest.Puzzles,
        digest.Began,
        digest.Seconds,
        digest.Events,
        digest.Entries,
        digest.Hash,
        row.IsLive,
        row.IsImported);
}
