using Companion.Server.Access;
using Companion.Server.Data;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Access;

public sealed class KeyFileTests : IDisposable
{
    private readonly TemporaryFolder _parent = new();
    private readonly DataFolder _folder;
    private readonly KeyFile _file;

    public KeyFileTests()
    {
        _folder = DataFolder.Open(_parent.In("data"));
        _file = new(_folder);
    }

    [Fact]
    public void The_first_start_makes_a_key_for_each_role_and_the_next_one_finds_them()
    {
        var made = Texts(_file.Load());

        Assert.Equal(Enum.GetValues<AccessRole>(), made.Keys.Order());
        Assert.Distinct(made.Values);
        Assert.Equal(made, Texts(_file.Load()));
    }

    [Fact]
    public void Folder_and_file_are_closed_to_other_users()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no modes; the user's folders are closed there.");
        _file.Load();

        Assert.Equal("700", Mode(_folder.Path));
        Assert.Equal("600", Mode(_folder.Keys));
    }

    [Fact]
    public void A_file_that_was_opened_to_others_is_closed_again()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no modes; the user's folders are closed there.");
        _file.Load();
#pragma warning disable CA1416 // skipped on Windows above
        File.SetUnixFileMode(_folder.Keys, UnixFileMode.UserRead | UnixFileMode.OtherRead);
#pragma warning restore CA1416
        _file.Load();

        Assert.Equal("600", Mode(_folder.Keys));
    }

    [Fact]
    public void Renewing_one_key_keeps_the_others()
    {
        var before = Texts(_file.Load());
        var after = Texts(_file.Renew([AccessRole.Overlay]));

        Assert.Equal([AccessRole.Overlay], before.Keys.Where(role => before[role] != after[role]));
        Assert.Equal(after, Texts(_file.Load()));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{\"presenter\":\"short\"}")]
    [InlineData("{\"nobody\":\"AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA\"}")]
    public void A_damaged_file_is_a_plain_error_that_says_the_way_out(string content)
    {
        File.WriteAllText(_folder.Keys, content);

        var error = Assert.Throws<PlainException>(() => _file.Load());
        Assert.Contains("delete it and start again", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_role_that_the_file_does_not_know_yet_is_given_a_key_and_the_others_stay()
    {
        var key = Key.Make().Reveal();
        File.WriteAllText(_folder.Keys, $$"""{"presenter":"{{key}}"}""");

        var keys = Texts(_file.Load());
        Assert.Equal(key, keys[AccessRole.Presenter]);
        Assert.Equal(Enum.GetValues<AccessRole>(), keys.Keys.Order());
    }

    public void Dispose() => _parent.Dispose();

    private static Dictionary<AccessRole, string> Texts(IReadOnlyDictionary<AccessRole, Key> keys) =>
        keys.ToDictionary(pair => pair.Key, pair => pair.Value.Reveal());

    private static string Mode(string path) => OperatingSystem.IsWindows()
        ? ""
        : Convert.ToString((int)File.GetUnixFileMode(path), toBase: 8);
}
