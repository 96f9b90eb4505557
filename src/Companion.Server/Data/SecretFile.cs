using Companion.Server.Chat;

namespace Companion.Server.Data;

/// <summary>
/// Where a secret comes from: the environment, or a file of its own in the data folder that its owner alone can read; never
/// <c>companion.json</c>, which may be shown and passed on.
/// </summary>
internal static class SecretFile
{
    /// <summary>Looks for a secret.</summary>
    /// <param name="named">What the environment says, which comes first; may be null or empty.</param>
    /// <param name="file">The file, which may be absent.</param>
    /// <returns>The secret, or null where there is none.</returns>
    /// <exception cref="PlainException">The file is open to others or cannot be read.</exception>
    public static Secret? Find(string? named, string file)
    {
        if (named is { Length: > 0 })
            return new(named);
        if (!File.Exists(file))
            return null;
        if (OwnerOnly.IsOpenToOthers(file))
            throw new PlainException($"Other users of this machine can read {file}: close it to them ('chmod 600') and start again.");
        try
        {
            return File.ReadAllText(file).Trim() is { Length: > 0 } text ? new(text) : null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new PlainException($"The file {file} cannot be read: let its owner read it, or delete it.", failure);
        }
    }
}
