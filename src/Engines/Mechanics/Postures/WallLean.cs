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
    /// <param name="whole">Its balance: the centre and the base on the floor.</param>
    /// <remarks>A push p at height h moves the point under the centre that the floor has to carry back from the wall by p·h: statics.</remarks>
    public static WallLean Of(SettledPosture settled, Point2 towards, BodyBalance whole)
    {
        var heightH = settled.Posture.Wall.Average(c => SettledPosture.Centre(settled.Body, c).ZH);
        var backH = whole.Base.DistanceBackH(whole.Centre.OnFloor, towards);
        return new WallLean(towards, heightH, backH / heightH);
    }
}
