using Companion.Server.Data;
using Companion.Server.Relay;
using Companion.Server.Settings;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Relay;

public sealed class RelaySettingsTests
{
    [Theory]
    [InlineData("", "companion")]
    [InlineData("127.0.0.1:6379", "companion")]
    [InlineData("redis.example:6380,ssl=true,user=show", "show-2")]
    public void These_can_be_used(string redis, string prefix) =>
        Assert.Empty(new RelaySettings { Redis = redis, Prefix = prefix }.Faults());

    [Theory]
    [InlineData("127.0.0.1:6379,ssl=perhaps", "companion", "is an address such as")]
    [InlineData(",", "companion", "is an address such as")]
    [InlineData("127.0.0.1:6379,password=tell-nobody", "companion", "COMPANION_REDIS_PASSWORD")]
    [InlineData("127.0.0.1:6379", "", "relay.prefix")]
    [InlineData("127.0.0.1:6379", "Our Show:", "relay.prefix")]
    public void These_are_refused_with_the_way_out_and_no_secret_is_repeated(string redis, string prefix, string says)
    {
        var fault = Assert.Single(new RelaySettings { Redis = redis, Prefix = prefix }.Faults());

        Assert.Contains(says, fault, StringComparison.Ordinal);
        Assert.DoesNotContain("tell-nobody", fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("127.0.0.1:6379", true)]
    [InlineData("localhost", true)]
    [InlineData("redis.example:6380,ssl=true", true)]
    [InlineData("redis.example:6379", false)]
    [InlineData("127.0.0.1:6379,redis.example:6379", false)]
    public async Task A_password_goes_over_TLS_or_to_this_machine_alone(string redis, bool isUsed)
    {
        using var folder = new TemporaryFolder();
        var data = DataFolder.Open(folder.Path);
        await CertificateFile.WriteSecret(data.RedisPassword, "tell-nobody\n");
        var settings = new RelaySettings { Redis = redis };

        if (isUsed)
            Assert.Equal("tell-nobody", RedisLink.Password(data, settings)?.Reveal());
        else
            Assert.Contains("ssl=true", Assert.Throws<PlainException>(() => RedisLink.Password(data, settings)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_audience_server_without_a_Redis_server_says_what_is_missing()
    {
        using var folder = new TemporaryFolder();
        var (code, _, error) = await CompanionProcess.Run(null, "audience", "--data", folder.Path);

        Assert.NotEqual(0, code);
        Assert.Contains("--upstream", error, StringComparison.Ordinal);
    }
}
