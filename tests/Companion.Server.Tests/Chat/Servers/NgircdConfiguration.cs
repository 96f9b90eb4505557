namespace Companion.Server.Tests.Chat.Servers;

/// <summary>What ngIRCd is told: this machine alone, no limits, nobody looked up.</summary>
internal static class NgircdConfiguration
{
    /// <summary>The text of the file.</summary>
    /// <param name="port">Where it listens.</param>
    /// <param name="sections">Further sections.</param>
    /// <param name="password">The password that all must name; empty for none.</param>
    public static string Text(int port, string sections = "", string password = "") => $"""
        [Global]
        Name = irc.example
        Info = A server for tests
        AdminEMail = admin@irc.example
        Listen = 127.0.0.1
        Ports = {port}
        MotdPhrase = Welcome
        {(password.Length > 0 ? $"Password = {password}" : "")}
        [Limits]
        MaxConnections = 0
        MaxConnectionsIP = 0
        MaxPenaltyTime = 0
        [Options]
        DNS = no
        Ident = no
        PAM = no
        {sections}
        """;
}
