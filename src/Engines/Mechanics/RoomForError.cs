namespace Slantwise.Engines.Mechanics;

/// <summary>How much room a posture leaves for error: the margin to each side, counted in standard deviations of the centre's shift.</summary>
/// <param name="RoomCount">Standard deviations to the side with the least room; less than 0 where the posture cannot be held.</param>
/// <param name="TightestEdge">Index of that side in the margin's edges; −1 where there is none.</param>
/// <param name="ErrorDeg">The standard deviation of each joint's error that it is counted in.</param>
/// <remarks>
/// Unlike a share of errors held, it goes on growing for firm postures, so it can order them. Twice the error gives half the room and the
/// same order.
/// </remarks>
public sealed record RoomForError(double RoomCount, int TightestEdge, double ErrorDeg)
{
    /// <summary>The room of a balance.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="spread">How far joint errors shift its centre.</param>
    /// <returns>Sides that a wall props are passed over. A base that is a point or a line leaves no room: 0.</returns>
    public static RoomForError Of(BodyBalance balance, CentreSpread spread)
    {
        var edges = balance.Margin.Edges;
        if (edges.Count < 3) return new RoomForError(0, -1, spread.ErrorDeg);
        var (least, tightest) = (double.PositiveInfinity, -1);
        for (var i = 0; i < edges.Count; i++)
        {
            if (edges[i].IsPropped) continue;
            var roomCount = edges[i].MarginH / spread.AlongH(edges[i].Outwards);
            if (roomCount < least) (least, tightest) = (roomCount, i);
        }
        return new RoomForError(least, tightest, spread.ErrorDeg);
    }
}
