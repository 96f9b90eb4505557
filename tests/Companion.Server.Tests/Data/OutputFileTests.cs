using Companion.Server.Data;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Data;

public sealed class OutputFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public void A_file_is_written_whole_and_nothing_else_stays_in_the_folder()
    {
        File.WriteAllText(_folder.In("page.html"), "much longer than what comes now");

        Write("page.html", "short");

        Assert.Equal("short", File.ReadAllText(_folder.In("page.html")));
        Assert.Equal([_folder.In("page.html")], Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void Stopped_before_it_is_written_what_was_there_stays()
    {
        File.WriteAllText(_folder.In("page.html"), "old");
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();

        Assert.Throws<OperationCanceledException>(() => OutputFile.At(_folder.In("page.html"), "--html").Write("new", stopped.Token));

        Assert.Equal("old", File.ReadAllText(_folder.In("page.html")));
        Assert.Single(Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void Failing_half_way_it_leaves_the_folder_as_it_was()
    {
        var file = OutputFile.At(_folder.In("page.html"), "--html");
        // There by the time it is written, and not to be replaced by a file.
        Directory.CreateDirectory(_folder.In("page.html", "in the way"));

        var plain = Assert.Throws<PlainException>(() => file.Write("new", CancellationToken.None));

        Assert.Equal($"The file {_folder.In("page.html")} cannot be written: name another one with --html.", plain.Message);
        Assert.Equal([_folder.In("page.html")], Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void A_file_that_was_closed_to_others_stays_closed()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has no such modes.");
            return;
        }

        File.WriteAllText(_folder.In("page.html"), "old");
        File.SetUnixFileMode(_folder.In("page.html"), UnixFileMode.UserRead | UnixFileMode.UserWrite);

        Write("page.html", "new");

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(_folder.In("page.html")));
    }

    [Fact]
    public void A_link_stays_one_and_what_it_leads_to_is_written()
    {
        File.WriteAllText(_folder.In("page.html"), "old");
        File.CreateSymbolicLink(_folder.In("link.html"), _folder.In("page.html"));

        Write("link.html", "new");

        Assert.Equal("new", File.ReadAllText(_folder.In("page.html")));
        Assert.NotNull(new FileInfo(_folder.In("link.html")).LinkTarget);
    }

    [Fact]
    public async Task A_device_is_written_to_and_stays_a_device()
    {
        var (code, output, _) = await CompanionProcess.Run(null, "route", Grids.EssayOne, "--pdf", "/dev/stdout");

        Assert.Equal(0, code);
        Assert.Contains("%PDF", output, StringComparison.Ordinal);
        Assert.True(new FileInfo("/dev/stdout").LinkTarget is not null);
    }

    public void Dispose() => _folder.Dispose();

    private void Write(string name, string content) => OutputFile.At(_folder.In(name), "--html").Write(content, CancellationToken.None);
}
