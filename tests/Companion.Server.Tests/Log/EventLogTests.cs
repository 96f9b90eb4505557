using Companion.Engine;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Server.Tests.Running;
using Companion.Session.Events;
using Microsoft.Data.Sqlite;

namespace Companion.Server.Tests.Log;

public sealed class EventLogTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 1, 2, 12, 0, 0, TimeSpan.Zero);

    private readonly TemporaryFolder _temporary = new();

    private DataFolder Folder => DataFolder.Open(_temporary.Path);

    [Fact]
    public void What_was_appended_is_replayed_in_order_by_the_next_start()
    {
        Event[] first = [new PuzzleLoaded(Noon, Grids.EssayOne, "One", "", "")];
        Event[] second = [new DigitPlaced(Noon, Cell.Parse("r5c5"), Digit.Of(5)), new MarksSettled(Noon.AddMilliseconds(1))];
        using (var log = SqliteEventLog.Open(Folder))
        {
            log.Append(0, first);
            log.Append(1, second);
        }

        using var again = SqliteEventLog.Open(Folder);
        Assert.Equal([.. first, .. second], again.Replay());
    }

    [Fact]
    public void The_events_of_one_decision_are_kept_all_or_none()
    {
        using var log = SqliteEventLog.Open(Folder);
        log.Append(0, [new MarksSettled(Noon), new MarksSettled(Noon)]);

        Assert.Throws<IOException>(() => log.Append(0, [new MarksSettled(Noon)])); // the number 1 is taken
        Assert.Throws<IOException>(() => log.Append(1, [new MarksSettled(Noon)]));
        log.Append(2, [new MarksSettled(Noon)]);

        Assert.Equal(3, log.Replay().Count());
    }

    [Fact]
    public void Its_files_are_closed_to_other_users()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no modes; the user's folders are closed there.");
        using var log = SqliteEventLog.Open(Folder);
        log.Append(0, [new MarksSettled(Noon)]);

        var files = Directory.GetFiles(_temporary.Path, "events.db*");
        Assert.Equal(3, files.Length);
#pragma warning disable CA1416 // skipped on Windows above
        Assert.All(files, file => Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file)));
#pragma warning restore CA1416
    }

    [Theory]
    [InlineData("INSERT INTO event VALUES (1, 0, 'sung-aloud', '{\"at\":\"2026-01-02T12:00:00.0000000+00:00\"}')", "sung-aloud")]
    [InlineData("INSERT INTO event VALUES (1, 0, 'digit-placed', '{\"at\":\"2026-01-02T12:00:00.0000000+00:00\"}')", "digit-placed")]
    [InlineData("INSERT INTO event VALUES (1, 0, 'digit-placed', 'nonsense')", "digit-placed")]
    public void An_event_that_this_version_cannot_read_is_a_plain_error_that_names_it(string insert, string kind)
    {
        using var log = SqliteEventLog.Open(Folder);
        Run(insert);

        var error = Assert.Throws<PlainException>(() => log.Replay().Count());
        Assert.Contains(kind, error.Message, StringComparison.Ordinal);
        Assert.Contains("--data", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_log_of_a_newer_layout_is_a_plain_error()
    {
        SqliteEventLog.Open(Folder).Dispose();
        Run("PRAGMA user_version=99");

        var error = Assert.Throws<PlainException>(() => SqliteEventLog.Open(Folder));
        Assert.Contains("newer version", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_log_is_a_plain_error()
    {
        File.WriteAllText(Folder.Events, string.Concat(Enumerable.Repeat("This is a shopping list. ", 200)));

        var error = Assert.Throws<PlainException>(() => SqliteEventLog.Open(Folder));
        Assert.Contains("move it away", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_belongs_to_one_companion_at_a_time()
    {
        using (Folder.Take())
        {
            var error = Assert.Throws<PlainException>(() => Folder.Take());
            Assert.Contains("Another companion is running", error.Message, StringComparison.Ordinal);
        }

        Folder.Take().Dispose();
    }

    public void Dispose() => _temporary.Dispose();

    private void Run(string statement)
    {
        using var connection = new SqliteConnection($"Data Source={Folder.Events};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = statement;
        command.ExecuteNonQuery();
    }
}
