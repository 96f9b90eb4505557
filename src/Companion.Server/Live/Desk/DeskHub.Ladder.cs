using Companion.Engine.Proofs;
using Companion.Server.Wire;
using Companion.Session.Commands;

namespace Companion.Server.Live.Desk;

/// <content>What a panel can ask for about the ladder.</content>
internal sealed partial class DeskHub
{
    public Task<Reply> StopLadder(string? rule) => Ask(_ => new StopLadder(rule is null ? null : Rule(rule)));

    public Task<Reply> SwitchFamily(string? family, bool isOn) => Ask(_ => new SwitchFamily(Family(family ?? ""), isOn));

    private RuleId Rule(string name) => ladder.Has(new(name))
        ? new(name)
        : throw new FormatException($"No rule of the ladder is called '{name}': choose one of the list.");

    private string Family(string name) => ladder.Families.Any(family => family.Name == name)
        ? name
        : throw new FormatException($"No family of rules is called '{name}': choose one of the list.");
}
