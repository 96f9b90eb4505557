using System.Security.Cryptography;
using System.Text.Json;
using Companion.Server.Tests.Running;

namespace Companion.Sight.Tests.Digits;

/// <summary>The network's file and the record of how it was made.</summary>
public sealed class WeightsTests
{
    private static readonly string Folder = Repository.In("src", "Companion.Sight", "Weights");

    [Fact]
    public void The_network_is_smaller_than_a_megabyte() => Assert.InRange(new FileInfo(Path.Combine(Folder, "digits.onnx")).Length, 1, 1_000_000);

    [Fact]
    public void The_record_is_of_this_network()
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Path.Combine(Folder, "digits.onnx"))));

        Assert.Contains(hash, File.ReadAllText(Path.Combine(Folder, "README.md")));
    }

    [Fact]
    public void No_family_is_in_two_lists()
    {
        string[] all = [.. Families("training"), .. Families("tuning"), .. Families("held-out")];

        Assert.Distinct(all);
        Assert.True(Families("training").Length >= 60 && Families("held-out").Length >= 20);
    }

    private static string[] Families(string list)
    {
        using var package = JsonDocument.Parse(File.ReadAllText(Repository.In("tests", "Companion.Sight.Training", "Fonts", list, "package.json")));
        return [.. package.RootElement.GetProperty("dependencies").EnumerateObject().Select(family => family.Name)];
    }
}
