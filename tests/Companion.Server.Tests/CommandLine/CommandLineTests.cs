using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.CommandLine;

public sealed class CommandLineTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string, string[]> WrongCalls => new()
    {
        { "Unrecognized command or argument 'skan'.", ["skan"] },
        { "Unrecognized command or argument '--loud'.", ["--loud"] },
        { "--port takes a number from 0 to 65535 and not 'many'.", ["--port", "many"] },
        { "--port takes a number from 0 to 65535 and not '65536'.", ["--port", "65536"] },
        { "Required argument 'grid|file|-' missing", ["scan"] },
        { "'r1c2' is not a candidate such as r4c7=5.", ["scan", Grids.EssayOne, "--without", "r1c2"] },
        { "No rule is called 'xyz': name one of ladder.json, such as xy-wing.", ["scan", Grids.EssayOne, "--stop-at", "xyz"] },
        { "No family of rules is called 'fishes': name 'singles', 'locked candidates', ", ["scan", Grids.EssayOne, "--without-family", "fishes"] },
        { "'r4c75' is no question: ask r4c7=5, why r4c7 is 5, or r4c7-5, why r4c7 cannot be 5.", ["why", Grids.EssayOne, "r4c75"] },
        { "'/no/such/file' is neither a grid of 81 characters nor a file that can be read", ["check", "/no/such/file"] },
        { "Option '--out' is required.", ["still", Grids.EssayOne] },
        { "--size takes a size such as 1280x720, 240 to 8192 each way, and not '5x5'.", ["still", Grids.EssayOne, "--size", "5x5", "--out", "x.png"] },
        { "--grade takes a number from 1 to 4 and not '5'.", ["still", Grids.EssayOne, "--grade", "5", "--out", "x.png"] },
        { "'everybody' has no key: name presenter, cohost, overlay or viewer.", ["keys", "renew", "everybody"] },
        { "'1' has no key: name presenter, cohost, overlay or viewer.", ["keys", "renew", "1"] },
    };

    [Theory]
    [MemberData(nameof(WrongCalls))]
    public async Task A_wrong_call_ends_with_2_and_one_plain_sentence(string sentence, string[] words)
    {
        var (code, output, error) = await Cli.Run(words);

        Assert.Equal(2, code);
        Assert.StartsWith(sentence, error, StringComparison.Ordinal);
        Assert.Single(error.Trim().Split('\n'));
        Assert.Equal("", output);
    }

    [Fact]
    public async Task Help_names_every_command()
    {
        var (code, output, _) = await Cli.Run("--help");

        Assert.Equal(0, code);
        Assert.All(["scan", "why", "check", "still", "keys", "--port", "--data"], word => Assert.Contains(word, output, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Keys_are_printed_as_links_with_one_caution()
    {
        var (code, output, _) = await Cli.Run("keys", "--data", _folder.Path, "--port", "5999");

        Assert.Equal(0, code);
        Assert.Matches(@"http://localhost:5999/presenter#k=[A-Za-z0-9_-]{43} ", output);
        Assert.Matches(@"http://localhost:5999/overlay#k=[A-Za-z0-9_-]{43} ", output);
        Assert.EndsWith("keep this window off air.", output.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Links_for_other_machines_name_the_host_and_go_by_tls()
    {
        var settings = """{ "listen": "0.0.0.0", "hosts": ["studio.example"], "tls": { "port": 5999, "certificate": "studio.pem" } }""";
        await File.WriteAllTextAsync(_folder.In("companion.json"), settings, TestContext.Current.CancellationToken);
        var (code, output, _) = await Cli.Run("keys", "--data", _folder.Path);

        Assert.Equal(0, code);
        var others = output.Split("From other machines:")[1];
        Assert.Matches(@"https://studio\.example:5999/desk#k=[A-Za-z0-9_-]{43} ", others);
        Assert.DoesNotContain("http://", others, StringComparison.Ordinal);
        Assert.Matches(@"http://localhost:5170/presenter#k=[A-Za-z0-9_-]{43} ", output);
    }

    [Fact]
    public async Task One_key_can_be_renewed()
    {
        var (_, before, _) = await Cli.Run("keys", "--data", _folder.Path);
        var (code, after, _) = await Cli.Run("keys", "renew", "cohost", "--data", _folder.Path);

        Assert.Equal(0, code);
        Assert.Equal(["Co-host"], before.Split('\n').Except(after.Split('\n')).Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[0]));
        Assert.Equal(after, (await Cli.Run("keys", "--data", _folder.Path)).Output);
    }

    [Fact]
    public async Task A_port_that_is_taken_is_said_plainly_with_the_way_out()
    {
        await using var other = await RunningCompanion.Start();
        var port = other.Address.Port.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var (code, _, error) = await Cli.Run("--port", port, "--data", _folder.Path);

        Assert.Equal(2, code);
        Assert.Equal($"Port {port} is taken by another program: stop that one, or choose another port with --port.", error.Trim());
    }

    [Fact]
    public async Task An_address_that_this_machine_does_not_have_is_said_plainly_with_the_way_out()
    {
        using var certificate = new TestCertificate();
        await CertificateFile.WriteSecret(_folder.In("studio.pem"), certificate.Pem + "\n" + certificate.KeyPem);
        // 192.0.2.0/24 belongs to no machine (RFC 5737, TEST-NET-1).
        var settings = """{ "listen": "192.0.2.1", "hosts": ["studio.example"], "tls": { "port": 0, "certificate": "studio.pem" } }""";
        await File.WriteAllTextAsync(_folder.In("companion.json"), settings, TestContext.Current.CancellationToken);
        var (code, _, error) = await Cli.Run("--port", "0", "--data", _folder.Path);

        Assert.Equal(2, code);
        Assert.Equal("This machine has no address 192.0.2.1: change listen in companion.json.", error.Trim());
    }

    [Theory]
    [InlineData("{ \"port\": 70000 }", "The port is a number from 0 to 65535 and not 70000: change it.")]
    [InlineData("{ \"wordsPerMinute\": 10, \"audiencePushesPerSecond\": 0 }", "wordsPerMinute is 110 to 180 and not 10: change it. audiencePushesPerSecond is 1 to 10 and not 0: change it.")]
    [InlineData("{ \"listen\": \"192.168.0.7\" }", "Other machines are answered by TLS alone: name a certificate under tls, or take listen out.")]
    [InlineData("{ \"listen\": \"0.0.0.0\", \"tls\": { \"certificate\": \"studio.pem\" } }", "With 0.0.0.0 the links for other machines need a name: add the name of this machine to hosts.")]
    [InlineData("{ \"listen\": \"studio\", \"tls\": { \"certificate\": \"studio.pem\" } }", "listen is an address of this machine such as 192.168.0.7, or 0.0.0.0 for all, and not 'studio': change it.")]
    [InlineData("{ \"tls\": { \"certificate\": \"studio.pem\" } }", "tls names a certificate, but nobody is listened to: name this machine's address as listen, or take tls out.")]
    [InlineData("{ \"tls\": { \"port\": 65536 } }", "The port of tls is a number from 0 to 65535 and not 65536: change it.")]
    [InlineData("{ \"tls\": { \"password\": \"secret\" } }", "A password does not stand among the settings: put it into COMPANION_TLS_PASSWORD or a passwordFile.")]
    [InlineData("{ \"listen\": \"127.0.0.2\", \"tls\": { \"certificate\": \"no.pem\" } }", "The certificate ")]
    [InlineData("{ \"port\": \"many\" }", "The settings cannot be read:")]
    [InlineData("{ port", "The settings cannot be read:")]
    public async Task Settings_that_cannot_be_used_are_said_plainly(string settings, string sentence)
    {
        await File.WriteAllTextAsync(_folder.In("companion.json"), settings, TestContext.Current.CancellationToken);
        var (code, _, error) = await Cli.Run("--data", _folder.Path);

        Assert.Equal(2, code);
        Assert.StartsWith(sentence, error, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();
}
