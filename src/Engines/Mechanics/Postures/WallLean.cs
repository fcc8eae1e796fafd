namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>How a posture leans on a wall that pushes straight away from itself.</summary>
/// <param name="Towards">Which way the wall is, a vector of length 1 on the floor.</param>
/// <param name="HeightH">How high the wall is met, in statures.</param>
/// <param name="PushFraction">The least push of the wall that holds the posture, a share of the body's weight; 0 where it would stand alone, NaN where no push holds it.</param>
public sealed record WallLean(Point2 Towards, double HeightH, double PushFraction)
{
    /// <summary>The lean of a settled posture.</summary>
    /// <param name="settled">With at least one part at the wall.</param>
    /// <param name="towards">Which way the wall is.</param>
    /// <param name="table">Whose mass fractions.</param>
    /// <remarks>A push p at height h moves the point under the centre that the floor has to carry back from the wall by p·h: statics.</remarks>
    public static WallLean Of(SettledPosture settled, Point2 towards, BodyTable table)
    {
        var heightH = settled.Posture.Wall.Average(c => SettledPosture.Centre(settled.Body, c).ZH);
        var balance = BodyBalance.Of(settled.Bodies, table, null);
        var backH = DistanceBackH(balance.Centre.OnFloor, towards, balance.Base);
        return new WallLean(towards, heightH, backH / heightH);
    }

    // How far back from the wall the first point of the base lies: 0 inside it, NaN where the line misses it.
    private static double DistanceBackH(Point2 centre, Point2 towards, BaseOfSupport baseOfSupport)
    {
        if (baseOfSupport.Contains(centre)) return 0;
        var (nearestH, corners) = (double.NaN, baseOfSupport.Corners);
        for (var i = 0; i < corners.Count; i++)
        {
            var (from, along) = (corners[i], corners[(i + 1) % corners.Count] - corners[i]);
            var across = towards.XH * along.YH - towards.YH * along.XH;
            if (Math.Abs(across) < 1e-15) continue;
            var to = centre - from;
            var backH = (to.XH * along.YH - to.YH * along.XH) / across;
            var atFraction = (to.XH * towards.YH - to.YH * towards.XH) / (along.XH * towards.YH - along.YH * towards.XH);
            if (backH >= 0 && atFraction is >= 0 and <= 1 && !(backH >= nearestH)) nearestH = backH;
        }
        return nearestH;
    }
}
