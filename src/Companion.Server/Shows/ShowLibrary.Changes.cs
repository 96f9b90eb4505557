using System.Collections.Immutable;
using Companion.Server.Log;
using Companion.Session.Chapters;
using Companion.Session.Shows.Files;
using Companion.Session.Views;

namespace Companion.Server.Shows;

/// <content>What can be changed: what is said about a show beside its events, which are never edited, and shows of files.</content>
public sealed partial class ShowLibrary
{
    private const double MostOffset = 24 * 60 * 60;

    /// <summary>
    /// Keeps the show of a file. Nothing of it is run: each event is read as an event of ours, the whole is replayed, and only then is it
    /// written, all or nothing.
    /// </summary>
    /// <param name="bytes">The file.</param>
    /// <param name="voice">The words for what the stage shows.</param>
    /// <returns>The number of the show.</returns>
    /// <exception cref="PlainException">It is no whole show file; the message has all reasons.</exception>
    internal int Import(ReadOnlySpan<byte> bytes, Voice voice)
    {
        var reading = ShowFileReader.Read(bytes);
        if (reading is not { Show: { } show, File: { } file })
            throw new PlainException(string.Join(' ', reading.Faults));
        if (reading.Missing is { } missing)
            throw new PlainException($"{missing} Only a whole file is imported: export the show again.");
        try
        {
            foreach (var moment in show.Moments)
                PublicViews.Stage(moment.State, voice);
        }
        catch (Exception hostile) when (hostile is not OutOfMemoryException)
        {
            throw new PlainException("The events lead to a board that cannot be shown: export the show again.", hostile);
        }

        return _table.Insert(show, file);
    }

    /// <summary>Keeps the show of a file.</summary>
    /// <param name="path">The file's path.</param>
    /// <param name="voice">The words for what the stage shows.</param>
    /// <returns>The number of the show.</returns>
    /// <exception cref="PlainException">It is no whole show file; the message has all reasons.</exception>
    internal int Import(string path, Voice voice) => Import(ReadBytes(path, $"There is no show file '{path}' that can be read: name one that 'companion shows export' has written."), voice);

    /// <summary>Sets how much later in the recording everything is than it was keyed.</summary>
    /// <param name="id">The show.</param>
    /// <param name="seconds">Seconds, above zero where the recording had started before the key; at most a day either way.</param>
    /// <exception cref="PlainException">There is no such show, or the offset is longer than a day.</exception>
    public void SetOffset(int id, double seconds)
    {
        if (!(Math.Abs(seconds) <= MostOffset))
            throw new PlainException("An offset is a number of seconds, at most a day's: correct it.");
        _table.SetOffset(id, Math.Round(seconds, 3));
    }

    /// <summary>Sets the same of a show by its name.</summary>
    /// <param name="name">Its number, or <see cref="Latest"/>.</param>
    /// <param name="seconds">Seconds, as in <see cref="SetOffset(int, double)"/>.</param>
    /// <exception cref="PlainException">There is no such show, or the offset is longer than a day.</exception>
    internal void SetOffset(string name, double seconds) => SetOffset(RowOf(name).Id, seconds);

    /// <summary>Keeps chapters as they were edited, or goes back to those that are made from the log.</summary>
    /// <param name="id">The show.</param>
    /// <param name="chapters">The chapters; null for those of the log.</param>
    /// <exception cref="PlainException">There is no such show.</exception>
    public void SetChapters(int id, ImmutableArray<ChapterMark>? chapters) => _table.SetChapters(id, ShowRow.WriteChapters(chapters));

    /// <summary>Writes a show as one JSON document.</summary>
    /// <param name="id">The show.</param>
    /// <param name="output">Where to; left open.</param>
    /// <exception cref="PlainException">There is no such show, or it cannot be read.</exception>
    public void Export(string id, Stream output) => ShowFileWriter.Write(Open(id).File, output);
}
