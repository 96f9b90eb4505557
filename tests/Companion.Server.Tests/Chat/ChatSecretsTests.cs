using Companion.Server.Chat;
using Companion.Server.Chat.Irc;
using Companion.Server.Data;
using Companion.Server.Settings;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Chat;

public sealed class ChatSecretsTests : IDisposable
{
    private const string Shared = "0123456789abcdef0123456789abcdef";

    private readonly TemporaryFolder _temporary = new();

    private DataFolder Folder => DataFolder.Open(_temporary.Path);

    [Fact]
    public void Where_there_are_none_there_are_none() => Assert.Equal(new ChatSecrets(null, null), Read());

    [Fact]
    public void They_come_from_files_that_only_the_owner_reads_and_before_those_from_the_environment()
    {
        Write(Folder.ChatPassword, "sesame\n", isOpen: false);
        Write(Folder.ChatSecret, Shared, isOpen: false);

        Assert.Equal("sesame", Read().Password?.Reveal());
        Assert.Equal(Shared, Read().SharedSecret?.Reveal());
        Assert.Equal("other", Read(("COMPANION_CHAT_PASSWORD", "other")).Password?.Reveal());
    }

    [Fact]
    public void A_file_that_others_can_read_is_refused()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no modes; the user's folders are closed there.");
        Write(Folder.ChatPassword, "sesame", isOpen: true);

        var refusal = Assert.Throws<PlainException>(() => Read());
        Assert.Contains("chmod 600", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("sesame", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_shared_secret_is_refused()
    {
        var refusal = Assert.Throws<PlainException>(() => Read(("COMPANION_CHAT_SECRET", Shared[1..])));

        Assert.Contains("32 characters", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("irc.example", false, false)]
    [InlineData("irc.example", true, true)]
    [InlineData("localhost", false, true)]
    [InlineData("127.0.0.1", false, true)]
    [InlineData("::1", false, true)]
    [InlineData("127.0.0.1.example", false, false)]
    public void A_password_never_goes_over_an_open_line(string server, bool tls, bool isFine)
    {
        ChatSettings settings = new() { Irc = new() { Server = server, Tls = tls, Channel = "#grid" } };
        ChatSecrets ReadIt() => ChatSecrets.Read(Folder, settings, name => name == "COMPANION_CHAT_PASSWORD" ? "sesame" : null);

        if (isFine)
            Assert.NotNull(ReadIt().Password);
        else
            Assert.Throws<PlainException>(ReadIt);
    }

    [Fact]
    public void Neither_secret_prints_itself() =>
        Assert.DoesNotContain("esame", $"{Read(("COMPANION_CHAT_PASSWORD", "sesame"))}", StringComparison.Ordinal);

    [Theory]
    [InlineData("{}", null)]
    [InlineData("""{ "chat": { "irc": { "server": "irc.example", "channel": "#grid" } } }""", null)]
    [InlineData("""{ "chat": { "irc": { "server": "irc.example" } } }""", "chat.irc.channel")]
    [InlineData("""{ "chat": { "irc": { "server": "irc.example", "channel": "#a,#b" } } }""", "chat.irc.channel")]
    [InlineData("""{ "chat": { "irc": { "server": "irc.example", "channel": "#grid", "nick": "a b" } } }""", "chat.irc.nick")]
    [InlineData("""{ "chat": { "irc": { "server": "irc.example", "channel": "#grid", "nick": "" } } }""", "chat.irc.nick")]
    [InlineData("""{ "chat": { "irc": { "server": "irc.example", "channel": "#grid", "port": 0 } } }""", "chat.irc.port")]
    [InlineData("""{ "chat": { "irc": { "server": "irc.example", "channel": "#grid", "secondsPerMessage": 0 } } }""", "chat.irc.secondsPerMessage")]
    [InlineData("""{ "chat": { "irc": { "server": "irc.example", "channel": "#grid", "burst": 0 } } }""", "chat.irc.burst")]
    public void Settings_that_cannot_work_are_named(string json, string? named)
    {
        File.WriteAllText(Folder.Settings, json);

        if (named is null)
            Assert.Equal(json.Contains("irc.example", StringComparison.Ordinal), SettingsFeature.Read(Folder).Chat.Irc.IsOn);
        else
            Assert.Contains(named, Assert.Throws<PlainException>(() => SettingsFeature.Read(Folder)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_certificate_is_looked_for_in_the_data_folder()
    {
        IrcSettings settings = new() { Server = "irc.example", Channel = "#grid", Certificate = "irc.pem" };

        Assert.Contains(_temporary.In("irc.pem"), Assert.Throws<PlainException>(() => settings.In(Folder)).Message, StringComparison.Ordinal);
        File.WriteAllText(_temporary.In("irc.pem"), "");
        Assert.Equal(_temporary.In("irc.pem"), settings.In(Folder).Certificate);
    }

    public void Dispose() => _temporary.Dispose();

    private ChatSecrets Read(params (string Name, string Value)[] environment) =>
        ChatSecrets.Read(Folder, new(), name => Array.Find(environment, variable => variable.Name == name).Value);

    private static void Write(string path, string text, bool isOpen)
    {
        OwnerOnly.MakeFile(path);
        File.WriteAllText(path, text);
        if (isOpen && !OperatingSystem.IsWindows())
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
    }
}
