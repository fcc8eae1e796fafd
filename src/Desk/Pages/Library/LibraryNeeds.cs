using System.Collections.Frozen;
using System.Globalization;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Desk.Pages.Library;

/// <summary>What each task of the library takes, read from its levels by a person: the files say it in sentences only.</summary>
public static class LibraryNeeds
{
    private static readonly FrozenSet<string> More = FrozenSet.Create(StringComparer.Ordinal,
    [
        // A bench or a box at an easier level.
        "bear-walk", "bunny-hop", "cartwheel-over-a-line", "donkey-lift", "front-support", "handstand-to-wall", "jump-down", "table-balance",
        // A slope, hoops, bars.
        "backward-roll", "forward-roll", "hop-through-hoops", "low-hurdle-steps",
        // Something to send or strike that is no ball, or something to strike with.
        "bat-off-tee", "flying-disc", "stick-dribble", "underarm-toss", "volley-up",
    ]);

    private static readonly FrozenSet<string> BallToo = FrozenSet.Create(StringComparer.Ordinal, ["gallop-and-slide"]);

    /// <summary>What a task takes.</summary>
    /// <param name="entry">A task of the library or of the school.</param>
    public static LibraryNeed Of(LibraryEntry entry)
    {
        // A school's own copy takes what the library's task takes; what else a school made takes what its pattern says.
        var key = entry.IsOwn ? LibraryShelf.Find(entry.Design.Id, CultureInfo.InvariantCulture)?.Key ?? "" : entry.Key;
        if (More.Contains(key)) return LibraryNeed.More;
        if (BallToo.Contains(key)) return LibraryNeed.Ball;
        return entry.Design.Pattern switch
        {
            MovementPattern.RopeJumping => LibraryNeed.Rope,
            MovementPattern.Throw or MovementPattern.Catch or MovementPattern.Strike or MovementPattern.Dribble => LibraryNeed.Ball,
            _ => entry.Design.Mats.MatCount > 0 ? LibraryNeed.Mat : LibraryNeed.Floor,
        };
    }
}
