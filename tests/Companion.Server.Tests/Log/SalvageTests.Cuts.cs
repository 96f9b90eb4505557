using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Log;

public sealed partial class SalvageTests
{
    // What a cut within a page leaves is that page's beginning, which is never read: a log cut there is that of its whole pages, which
    // the next test asserts of every byte. So one cut within each page and one at its edge stand for all; and each byte of the file's head.
    [Fact]
    public void A_log_cut_anywhere_is_read_up_to_the_last_whole_event()
    {
        using var made = new TemporaryFolder();
        var (bytes, events) = MadeIn(made, shows: 1, eventsEach: 40);
        var most = 0;
        for (var page = bytes.Length / Page; page > 0; page--)
        {
            most = Math.Max(most, Cut(bytes, events, page * Page - 1));
            if (page * Page < bytes.Length)
                most = Math.Max(most, Cut(bytes, events, page * Page));
        }

        foreach (var length in Enumerable.Range(1, 20).Append(99))
            Cut(bytes, events, length);
        Assert.InRange(most, events.Count / 2, events.Count);
    }

    [Fact]
    public void A_log_cut_at_any_byte_is_that_of_its_whole_pages()
    {
        using var made = new TemporaryFolder();
        var (bytes, _) = MadeIn(made, shows: 1, eventsEach: 40);
        using var folder = new TemporaryFolder();
        var data = DataFolder.Open(folder.Path);
        File.WriteAllBytes(data.Events, bytes);
        using var cut = new FileStream(data.Events, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite, bufferSize: 0);
        var whole = bytes.Length - Page;
        for (var length = bytes.Length - 1; length >= Page; length--)
        {
            cut.SetLength(length);
            Assert.Equal(length != whole, Salvage.EndsWithinPage(data));
            Salvage.CutToPages(data.Events);
            Assert.Equal(whole, cut.Length);
            if (length == whole)
                whole -= Page;
        }

        Assert.Equal(bytes[..Page], File.ReadAllBytes(data.Events));
    }
}
