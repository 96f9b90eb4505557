using System.Text.Json;
using Companion.Server.Data;

namespace Companion.Server.Access;

/// <summary>The file that holds one key for each role. It is made at the first start and closed to other users.</summary>
/// <param name="folder">Where it lies.</param>
internal sealed class KeyFile(DataFolder folder)
{
    /// <summary>When it was last written, in UTC; what a running server goes by.</summary>
    public DateTime WrittenAt => File.GetLastWriteTimeUtc(folder.Keys);

    /// <summary>The keys; those that are not in the file yet are made.</summary>
    /// <exception cref="PlainException">The file is damaged.</exception>
    public IReadOnlyDictionary<AccessRole, Key> Load()
    {
        if (!File.Exists(folder.Keys))
            return Renew([]);
        OwnerOnly.Close(folder.Keys);
        var keys = Read();
        return Enum.GetValues<AccessRole>().All(keys.ContainsKey) ? keys : Renew([]);
    }

    /// <summary>Replaces the keys of these roles, whose old links stop working, and makes those that are not there yet.</summary>
    /// <param name="roles">Whose; may be empty.</param>
    /// <returns>All keys, new and kept.</returns>
    /// <exception cref="PlainException">The file is damaged.</exception>
    public IReadOnlyDictionary<AccessRole, Key> Renew(IReadOnlyCollection<AccessRole> roles)
    {
        var keys = File.Exists(folder.Keys) ? new Dictionary<AccessRole, Key>(Read()) : [];
        foreach (var role in Enum.GetValues<AccessRole>())
        {
            if (roles.Contains(role) || !keys.ContainsKey(role))
                keys[role] = Key.Make();
        }

        var text = JsonSerializer.SerializeToUtf8Bytes(
            keys.ToDictionary(pair => JsonNamingPolicy.CamelCase.ConvertName(pair.Key.ToString()), pair => pair.Value.Reveal()));
        OwnerOnly.Replace(folder.Keys, text);
        return keys;
    }

    private Dictionary<AccessRole, Key> Read()
    {
        try
        {
            var texts = JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllBytes(folder.Keys)) ?? [];
            return texts.ToDictionary(
                pair => Enum.Parse<AccessRole>(pair.Key, ignoreCase: true),
                pair => Key.Read(pair.Value) ?? throw new FormatException("A key is 43 characters of base64url."));
        }
        catch (Exception damage) when (damage is JsonException or FormatException or ArgumentException)
        {
            throw new PlainException(
                $"The keys file {folder.Keys} is damaged: delete it and start again, and new keys are made.", damage);
        }
    }
}
