namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>An order of postures by how much room for error they leave: a hypothesis about which are harder to hold still.</summary>
/// <remarks>
/// <para>The rule: the more standard deviations of joint error fit between the line of gravity and the nearest side of the base
/// (<see cref="RoomForError"/>), the easier. Two postures whose rooms differ by less than a tenth share a place.</para>
/// <para>It says nothing about strength, suppleness, fear, practice or pain, and it is the same for a child who is strong and one who is
/// not. No study is known to us that tests it for school balances; data of a class may contradict it, and then the data are right.</para>
/// </remarks>
public static class MechanicalOrder
{
    /// <summary>The standard deviation of each joint's error that rooms are counted in, in degrees; an assumption that does not change the order.</summary>
    public const double ErrorDeg = 3;

    // Rooms closer than this are not told apart.
    private const double AlikeFraction = .1;

    /// <summary>The places of postures, 1 for the one with the most room.</summary>
    /// <param name="postures">Each settles; any number, any order.</param>
    /// <param name="table">Whose mass fractions.</param>
    /// <returns>
    /// One place a posture, in the order given; alike ones share the smaller number. None for a posture of two bodies, whose errors the
    /// partner corrects in ways that we do not compute.
    /// </returns>
    public static IReadOnlyList<int?> PlacesOf(IReadOnlyList<Posture> postures, BodyTable table = BodyTable.Mean)
    {
        var rooms = postures.Select(p => p.Partner is null ? RoomOf(p, table).RoomCount : (double?)null).ToArray();
        var places = new int?[rooms.Length];
        var (place, firstOfPlace) = (0, double.NaN);
        var ordered = Enumerable.Range(0, rooms.Length).Where(i => rooms[i] is not null).OrderByDescending(i => rooms[i]!.Value).ToArray();
        for (var at = 0; at < ordered.Length; at++)
        {
            var roomCount = rooms[ordered[at]]!.Value;
            var isAlike = at > 0 && firstOfPlace - roomCount < AlikeFraction * Math.Abs(firstOfPlace);
            if (!isAlike) (place, firstOfPlace) = (at + 1, roomCount);
            places[ordered[at]] = place;
        }
        return places;
    }

    /// <summary>The room of a posture of one body.</summary>
    /// <param name="posture">It settles and has no partner.</param>
    /// <param name="table">Whose mass fractions.</param>
    /// <exception cref="ArgumentException">A posture of two bodies.</exception>
    public static RoomForError RoomOf(Posture posture, BodyTable table = BodyTable.Mean)
    {
        if (posture.Partner is not null) throw new ArgumentException($"{posture.Key} has two bodies: the room for error is known for one.", nameof(posture));
        var settled = posture.Settle();
        var spread = CentreSpread.Of(posture.Pose, settled.Body, ErrorDeg, table);
        return RoomForError.Of(PostureBalance.Of(settled, table).Whole, spread);
    }
}
