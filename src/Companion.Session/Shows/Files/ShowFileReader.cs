using System.Text.Json;
using Companion.Session.Events;
using Companion.Session.Events.Storage;

namespace Companion.Session.Shows.Files;

/// <summary>Reads show files of this version and of all before it. Takes any bytes.</summary>
public static class ShowFileReader
{
    private const int MostReasons = 5;

    /// <summary>Reads a file and replays its show. Whether a cut file is good enough is for the caller to say.</summary>
    /// <param name="bytes">The file.</param>
    public static ShowReading Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > ShowFile.LargestBytes)
            return ShowReading.Refused($"A show file has at most {ShowFile.LargestBytes / 1024 / 1024} MB: this is another file.");
        ShowParts parts;
        try
        {
            parts = ShowParts.Of(bytes);
            if (parts.Fault() is { } reason)
                return ShowReading.Refused(reason);
        }
        catch (Exception fault) when (fault is JsonException or FormatException or InvalidOperationException or OverflowException)
        {
            return ShowReading.Refused($"This is no show file ({fault.Message.TrimEnd('.')}): export the show again.");
        }

        return Replay(parts);
    }

    private static ShowReading Replay(ShowParts parts)
    {
        var (events, faults) = (new List<Event>(parts.Events.Count), new List<string>());
        for (var number = 1; number <= parts.Events.Count && faults.Count < MostReasons; number++)
        {
            try
            {
                events.Add(EventText.Read(parts.Events[number - 1]));
            }
            catch (FormatException fault)
            {
                faults.Add($"Event {number} cannot be read: {fault.Message}");
            }
        }

        if (faults.Count == 0 && events.FindLastIndex(happened => happened is ShowBegun) is > 0 and var second)
            faults.Add($"Event {second + 1} begins another show: a file holds one.");
        if (faults.Count == 0 && parts.IsWhole && parts.Hash != ShowHash.Of(parts.Events))
            faults.Add("The events are not those that the file was written with (its hash differs): export the show again.");
        var file = new ShowFile(parts.Title, TimeSpan.FromSeconds(parts.Offset), parts.Chapters, [.. parts.Events]);
        return faults.Count == 0 ? Replay(file, events, parts) : ShowReading.Refused([.. faults]);
    }

    private static ShowReading Replay(ShowFile file, List<Event> events, ShowParts parts)
    {
        try
        {
            return new(file, StoredShow.Replay(events, title: file.Title, offset: file.Offset), parts.Missing(), []);
        }
        catch (Exception fault) when (fault is ArgumentException or FormatException or InvalidOperationException or OverflowException)
        {
            return ShowReading.Refused($"The events lead to no show ({fault.Message.TrimEnd('.')}): export the show again.");
        }
    }
}
