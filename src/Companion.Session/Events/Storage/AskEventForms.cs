using System.Collections.Immutable;
using Companion.Session.Asks;
using Companion.Session.Asks.Delays;
using Companion.Session.Audience;

namespace Companion.Session.Events.Storage;

/// <summary>The events about viewers who ask. None of them holds anything of a viewer.</summary>
internal static class AskEventForms
{
    public static readonly ImmutableArray<EventForm> All =
    [
        EventForm.Of<AsksLimited>(
            "asks-limited",
            (limited, body) =>
            {
                body["open"] = limited.Limits.Open;
                body["highest"] = (int)limited.Limits.Highest;
                body["quiet"] = limited.Limits.QuietOnAir;
            },
            (at, body) => new(at, new AskLimits(body.Flag("open"), body.Grade("highest"), body.Flag("quiet")))),
        EventForm.Of<DelaySet>(
            "delay-set",
            (set, body) =>
            {
                body["seconds"] = set.Delay.Seconds;
                body["least"] = set.Delay.Least;
                body["most"] = set.Delay.Most;
            },
            (at, body) => new(at, new Delay((int)body.Number("seconds"), body.Number("least"), body.Number("most")))),
        EventForm.Of<DelayCodeShown>(
            "delay-code-shown", (shown, body) => body["code"] = shown.Code, (at, body) => new(at, body.Text("code"))),
        EventForm.Of<DelayCodeHidden>("delay-code-hidden", at => new(at)),
        EventForm.Of<ShowEnded>("show-ended", at => new(at)),
        EventForm.Of<AudienceDoorSet>(
            "audience-door-set", (set, body) => body["door"] = NameOf(set.Door), (at, body) => new(at, DoorNamed(body.Text("door")))),
    ];

    private static string NameOf(AudienceDoor door) => door switch
    {
        AudienceDoor.ByLink => "by-link",
        AudienceDoor.Open => "open",
        _ => "closed",
    };

    private static AudienceDoor DoorNamed(string name) => name switch
    {
        "closed" => AudienceDoor.Closed,
        "by-link" => AudienceDoor.ByLink,
        "open" => AudienceDoor.Open,
        _ => throw new FormatException($"'{name}' says nobody who may open the audience's page."),
    };
}
