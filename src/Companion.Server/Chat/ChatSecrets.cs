using Companion.Server.Data;

namespace Companion.Server.Chat;

/// <summary>
/// The chat's secrets. Each comes from the environment, or from a file of its own in the data folder that its owner alone can read;
/// never from <c>companion.json</c>, which may be shown and passed on.
/// </summary>
/// <param name="Password">The password of the IRC account or server, or null.</param>
/// <param name="SharedSecret">What signs the messages of the HTTP way in, or null where that is closed.</param>
internal sealed record ChatSecrets(Secret? Password, Secret? SharedSecret)
{
    // An HMAC is as hard to guess as its key: 32 characters of base64 are 192 bits.
    private const int LeastSharedSecret = 32;

    /// <summary>Reads the secrets.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="settings">What they are for.</param>
    /// <param name="environment">The environment; null for the program's own.</param>
    /// <exception cref="PlainException">
    /// A file is open to others or cannot be read, the shared secret is short, or the password would go over an open line.
    /// </exception>
    public static ChatSecrets Read(DataFolder folder, ChatSettings settings, Func<string, string?>? environment = null)
    {
        var look = environment ?? Environment.GetEnvironmentVariable;
        var password = SecretFile.Find(look("COMPANION_CHAT_PASSWORD"), folder.ChatPassword);
        var shared = SecretFile.Find(look("COMPANION_CHAT_SECRET"), folder.ChatSecret);
        if (shared?.Reveal().Length < LeastSharedSecret)
        {
            throw new PlainException(
                $"The chat's shared secret has at least {LeastSharedSecret} characters: make one with 'openssl rand -base64 32'.");
        }

        if (password is not null && settings.Irc is { IsOn: true, Tls: false, IsLoopback: false })
            throw new PlainException("The chat's password goes over TLS only: set chat.irc.tls to true, or take the password away.");
        return new(password, shared);
    }
}
