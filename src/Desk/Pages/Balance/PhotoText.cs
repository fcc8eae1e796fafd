using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;
using Slantwise.Records.Postures;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>What is asked of a picture and what it answers, in words.</summary>
/// <param name="session">The pictures.</param>
public sealed class PhotoText(PhotoSession session)
{
    // Nineteen of twenty markings lie within this many standard deviations.
    private const double Nineteen = 1.96;

    /// <summary>What to mark: "Knee: the nearer one".</summary>
    public string Title(PhotoStep step, PhotoView view)
    {
        if (step.Landmark is { } landmark) return Sided(PhotoWords.Say($"Mark{landmark}"), step.Side, view);
        if (step.Part is { } part) return PhotoWords.Say(step.End == 0 ? "MarkOneEnd" : "MarkOtherEnd", Sided(TouchName(part, step.Side), step.Side, view));
        return PhotoWords.Say(step.End == 0 ? "MarkUprightOne" : "MarkUprightOther");
    }

    /// <summary>Where exactly that is.</summary>
    public static string Hint(PhotoStep step, PhotoView view)
    {
        if (step.Landmark is { } landmark) return PhotoWords.Say($"Where{landmark}");
        if (step.Part is null) return PhotoWords.Say("WhereUpright");
        return PhotoWords.Say(view.IsFront ? "WhereEndFront" : step.Part == ContactPart.Toes ? "WhereEndToes" : "WhereEnd");
    }

    /// <summary>What touches: "Feet", "Foot: the nearer one".</summary>
    public string Touch(PhotoTouch touch, PhotoView view) => Sided(TouchName(touch.Part, touch.Side), touch.Side, view);

    /// <summary>The answer in a sentence, its errors taken in.</summary>
    public static string Verdict(MarkedVerdict verdict) => PhotoWords.Say($"Verdict{verdict}");

    /// <summary>How far inside or outside, give or take, and over what.</summary>
    public string Margin(MarkedBalance balance, PhotoView view) => PhotoWords.Say(
        balance.MarginH >= 0 ? "MarginInside" : "MarginOutside",
        Length(Math.Abs(balance.MarginH)), GiveOrTake(balance.Weakest.MarginSdH), Over(balance.Weakest, balance, view));

    /// <summary>The same of two pictures.</summary>
    public string Margin(TwoViewBalance both) => PhotoWords.Say(
        both.MarginH >= 0 ? "BothInside" : "BothOutside", Length(Math.Abs(both.MarginH)), GiveOrTake(both.MarginSdH));

    /// <summary>The chance of being inside, of a hundred; never 0 or 100.</summary>
    public static string Chance(double heldFraction) => Math.Round(100 * heldFraction) switch
    {
        < 1 => PhotoWords.Say("ChanceLeast"),
        > 99 => PhotoWords.Say("ChanceMost"),
        var hundred => PhotoWords.Say("Chance", hundred),
    };

    /// <summary>How far it may tilt each way; none where it is outside.</summary>
    public string? Tipping(MarkedBalance balance, PhotoView view) => balance.MarginH < 0
        ? null
        : PhotoWords.Say("Tipping", Deg(balance.Left.TippingRad), Over(balance.Left, balance, view), Deg(balance.Right.TippingRad), Over(balance.Right, balance, view));

    /// <summary>What each contact carries, a line each.</summary>
    public IEnumerable<string> Shares(MarkedBalance balance, PhotoView view) => balance.Shares.Count < 2
        ? []
        : balance.Shares.Select(s => s is { ShareSdFraction: < .25 }
            ? PhotoWords.Say("Share", Touch(new(s.Part, s.Side), view), s.ShareFraction, Nineteen * s.ShareSdFraction)
            : PhotoWords.Say("ShareOpen", Touch(new(s.Part, s.Side), view), s.LeastFraction, s.MostFraction));

    /// <summary>What each contact of both pictures carries.</summary>
    public IEnumerable<string> Shares(TwoViewBalance both)
    {
        if (both.Loads is not { Shares.Count: > 1 } loads) yield break;
        for (var i = 0; i < loads.Shares.Count; i++)
            yield return BalanceWords.Share(Touch(new(both.Boxes[i].Part, both.Boxes[i].Side), session.Views[0]), loads.Shares[i], CultureInfo.CurrentUICulture);
    }

    /// <summary>What to mind, a sentence each.</summary>
    public IEnumerable<string> Cautions(MarkedBalance balance, PhotoView view)
    {
        foreach (var caution in balance.Cautions)
            yield return caution switch
            {
                MarkedCaution.Foreshortened => PhotoWords.Say(view.IsFront ? "CautionForeshortenedFront" : "CautionForeshortened", Segments(balance, l => l.IsForeshortened)),
                MarkedCaution.Overlong => PhotoWords.Say("CautionOverlong", Segments(balance, l => l.IsOverlong)),
                MarkedCaution.FloorAslant => PhotoWords.Say("CautionFloorAslant", Deg(Math.Abs(balance.Tilt.FloorTiltRad))),
                _ => PhotoWords.Say($"Caution{caution}"),
            };
    }

    /// <summary>What is still missing for an answer.</summary>
    public static string Needs(PhotoView view)
    {
        var needs = view.ToPicture().Needs();
        return needs.Count == 0 ? "" : PhotoWords.Say("StillNeeded", string.Join(", ", needs.Select(n => PhotoWords.Say($"Need{n}"))));
    }

    /// <summary>A length in the unit that was chosen.</summary>
    public string Length(double lengthH) => BalanceWords.Length(lengthH, CultureInfo.CurrentUICulture, session.StatureCm);

    // In the unit of the length before it, and never nothing.
    private string GiveOrTake(double sdH) =>
        Math.Max(1, Math.Round(Nineteen * sdH * (session.StatureCm ?? 100))).ToString("0", CultureInfo.CurrentCulture);

    private static string Deg(double angleRad) => Math.Round(angleRad * 180 / Math.PI).ToString("0", CultureInfo.CurrentCulture);

    // A point of the body says which end it is; a place of its own is on the left or the right.
    private string Over(MarkedEnd end, MarkedBalance balance, PhotoView view)
    {
        // Of one foot alone nobody asks which.
        var side = view.Touching.Count(t => t.Part == end.Part) > 1 ? end.Side : Side.Middle;
        if (end.Landmark is { } landmark && !view.IsFront && landmark is not (Landmark.Crown or Landmark.Knee or Landmark.Elbow))
            return Sided(PhotoWords.Say(end.Side == Side.Middle ? $"Over{landmark}Both" : $"Over{landmark}"), side, view);
        return PhotoWords.Say(end == balance.Left == !view.IsFlipped ? "OverOnLeft" : "OverOnRight", Lower(Sided(TouchName(end.Part, end.Side), side, view)));
    }

    private static string Lower(string name) => char.ToLower(name[0], CultureInfo.CurrentCulture) + name[1..];

    private static string TouchName(ContactPart part, Side side) =>
        PhotoWords.Say(side == Side.Middle && (PhotoTouch.IsOfArm(part) || PhotoTouch.IsOfLeg(part)) ? $"Touch{part}Both" : $"Touch{part}");

    private string Sided(string name, Side side, PhotoView view)
    {
        if (side == Side.Middle) return name;
        if (!view.IsFront) return PhotoWords.Say(side == Side.Left ? "Nearer" : "Farther", name);
        // Where the second camera stands on the right of the first picture, its own right is away from the first camera.
        return PhotoWords.Say(side == Side.Left == session.IsSecondFromRight ? "OnPictureLeft" : "OnPictureRight", name);
    }

    private static string Segments(MarkedBalance balance, Func<MarkedLength, bool> isMeant) => string.Join(", ", balance.Scale.Lengths
        .Where(isMeant).Select(l => PhotoWords.Say($"Segment{l.From}{l.To}")).Distinct());
}
