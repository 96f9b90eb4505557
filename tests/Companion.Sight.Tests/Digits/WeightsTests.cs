using System.Security.Cryptography;
using System.Text.Json;
using Companion.Server.Tests.Running;

namespace Companion.Sight.Tests.Digits;

/// <summary>The networks' files and the records of how they were made.</summary>
public sealed class WeightsTests
{
    private static readonly string Folder = Repository.In("src", "Companion.Sight", "Weights");

    [Fact]
    public void The_networks_are_smaller_than_a_megabyte_together() =>
        Assert.InRange(Directory.GetFiles(Folder, "*.onnx").Sum(file => new FileInfo(file).Length), 1, 1_000_000);

    [Theory]
    [InlineData("digits.onnx", "README.md")]
    [InlineData("signs.onnx", "signs.md")]
    [InlineData("cells.onnx", "cells.md")]
    public void The_record_is_of_this_network(string network, string record)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Path.Combine(Folder, network))));

        Assert.Contains(hash, File.ReadAllText(Path.Combine(Folder, record)));
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
