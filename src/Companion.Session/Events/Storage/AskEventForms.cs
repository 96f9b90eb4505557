using System.Collections.Immutable;
using Companion.Session.Asks;
using Companion.Session.Asks.Delays;

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
    ];
}
