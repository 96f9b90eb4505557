using System.Diagnostics;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Chat.Servers;

/// <summary>InspIRCd with what IRCv3 adds: tags, times, names of messages, echoes, accounts, bots.</summary>
internal sealed class Inspircd : IrcServer
{
    private static readonly string[] Modules =
    [
        "cap", "ircv3", "ircv3_servertime", "ircv3_msgid", "ircv3_ctctags", "ircv3_echomessage", "ircv3_accounttag", "ircv3_batch",
        "ircv3_labeledresponse", "services_account", "sasl", "botmode", "spanningtree",
    ];

    /// <summary>Where the server of accounts connects.</summary>
    public int ServersPort { get; } = FreePorts.Next();

    protected override Process Launch()
    {
        var configuration = Folder.In("inspircd.conf");
        File.WriteAllText(configuration, $"""
            <path configdir="{Folder.Path}" datadir="{Folder.Path}" logdir="{Folder.Path}" runtimedir="{Folder.Path}"
              moduledir="{DebianPackages.Irc.In("usr/lib/inspircd/modules")}">
            <server name="irc.example" description="A server for tests" network="Test" id="0AA">
            <admin name="admin" nick="admin" email="admin@irc.example">
            <bind address="127.0.0.1" port="{Port}" type="clients">
            <bind address="127.0.0.1" port="{ServersPort}" type="servers">
            <pid file="{Folder.In("pid")}">
            <dns server="127.0.0.1">
            <connect allow="*" commandrate="1000000" threshold="10000" fakelag="no" resolvehostnames="no" useident="no"
              localmax="1000" globalmax="1000" softsendq="4194304" hardsendq="8388608" recvq="262144">
            <log method="file" type="* -USERINPUT -USEROUTPUT" level="default" target="inspircd.log">
            {string.Concat(Modules.Select(module => $"<module name=\"{module}\">\n"))}
            <sasl target="services.example">
            <link name="services.example" ipaddr="127.0.0.1" port="{ServersPort}" allowmask="127.0.0.0/8" sendpass="link" recvpass="link">
            <uline server="services.example" silent="yes">
            """);
        return DebianPackages.Irc.Start("inspircd", "--nofork", "--runasroot", $"--config={configuration}");
    }
}
