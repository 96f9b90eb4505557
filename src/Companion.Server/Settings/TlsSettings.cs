namespace Companion.Server.Settings;

/// <summary>
/// The certificate by which other machines reach the companion. Paths that are not absolute begin at the data folder.
/// </summary>
internal sealed record TlsSettings
{
    /// <summary>The port for other machines, 0 to 65535; 0 takes any that is free. 5171 by default.</summary>
    public int Port { get; init; } = 5171;

    /// <summary>
    /// The certificate: a PEM file, with the certificates between it and its issuer after it, or a PKCS #12 file, which ends in
    /// <c>.pfx</c> or <c>.p12</c>. Empty for none.
    /// </summary>
    public string Certificate { get; init; } = "";

    /// <summary>The PEM file of the private key, closed to other users; empty where the certificate's file has it.</summary>
    public string Key { get; init; } = "";

    /// <summary>
    /// A file, closed to other users, whose first line is the password of the private key; empty where there is none or where
    /// <see cref="PasswordVariable"/> has it.
    /// </summary>
    public string PasswordFile { get; init; } = "";

    /// <summary>The variable of the environment that may hold the password of the private key.</summary>
    public const string PasswordVariable = "COMPANION_TLS_PASSWORD";
}
