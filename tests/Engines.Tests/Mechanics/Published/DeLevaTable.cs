namespace Slantwise.Engines.Tests.Mechanics.Published;

/// <summary>Table 4 of the paper, every definition of every segment, as printed.</summary>
/// <remarks>Source: [DeLeva1996] table 4; typed from a public copy and compared with two others, one misprint of a copy corrected.</remarks>
internal static class DeLevaTable
{
    // Mass in per cent of the body, length in millimetres, centre in per cent of the length from the first-named end.
    public static readonly DeLevaRow[] Rows =
    [
        new("F", "Head", "VERT", "MIDG", 6.68, 200.2, 58.94),
        new("M", "Head", "VERT", "MIDG", 6.94, 203.3, 59.76),
        new("F", "Trunk", "SUPR", "MIDH", 42.57, 529.3, 41.51),
        new("M", "Trunk", "SUPR", "MIDH", 43.46, 531.9, 44.86),
        new("F", "Upper part of trunk", "SUPR", "XYPH", 15.45, 142.5, 20.77),
        new("M", "Upper part of trunk", "SUPR", "XYPH", 15.96, 170.7, 29.99),
        new("F", "Middle part of trunk", "XYPH", "OMPH", 14.65, 205.3, 45.12),
        new("M", "Middle part of trunk", "XYPH", "OMPH", 16.33, 215.5, 45.02),
        new("F", "Lower part of trunk", "OMPH", "MIDH", 12.47, 181.5, 49.2),
        new("M", "Lower part of trunk", "OMPH", "MIDH", 11.17, 145.7, 61.15),
        new("F", "Upper arm", "SJC", "EJC", 2.55, 275.1, 57.54),
        new("M", "Upper arm", "SJC", "EJC", 2.71, 281.7, 57.72),
        new("F", "Forearm", "EJC", "WJC", 1.38, 264.3, 45.59),
        new("M", "Forearm", "EJC", "WJC", 1.62, 268.9, 45.74),
        new("F", "Hand", "WJC", "MET3", 0.56, 78.0, 74.74),
        new("M", "Hand", "WJC", "MET3", 0.61, 86.2, 79.0),
        new("F", "Thigh", "HJC", "KJC", 14.78, 368.5, 36.12),
        new("M", "Thigh", "HJC", "KJC", 14.16, 422.2, 40.95),
        new("F", "Shank", "KJC", "LMAL", 4.81, 432.3, 44.16),
        new("M", "Shank", "KJC", "LMAL", 4.33, 434.0, 44.59),
        new("F", "Foot", "HEEL", "TTIP", 1.29, 228.3, 40.14),
        new("M", "Foot", "HEEL", "TTIP", 1.37, 258.1, 44.15),
        new("F", "Head", "VERT", "CERV", 6.68, 243.7, 48.41),
        new("M", "Head", "VERT", "CERV", 6.94, 242.9, 50.02),
        new("F", "Trunk", "CERV", "MIDH", 42.57, 614.8, 49.64),
        new("M", "Trunk", "CERV", "MIDH", 43.46, 603.3, 51.38),
        new("F", "Trunk", "MIDS", "MIDH", 42.57, 497.9, 37.82),
        new("M", "Trunk", "MIDS", "MIDH", 43.46, 515.5, 43.1),
        new("F", "Upper part of trunk", "CERV", "XYPH", 15.45, 228.0, 50.5),
        new("M", "Upper part of trunk", "CERV", "XYPH", 15.96, 242.1, 50.66),
        new("F", "Forearm", "EJC", "STYL", 1.38, 262.4, 45.92),
        new("M", "Forearm", "EJC", "STYL", 1.62, 266.9, 46.08),
        new("F", "Hand", "WJC", "DAC3", 0.56, 170.1, 34.27),
        new("M", "Hand", "WJC", "DAC3", 0.61, 187.9, 36.24),
        new("F", "Hand", "STYL", "DAC3", 0.56, 172.0, 35.02),
        new("M", "Hand", "STYL", "DAC3", 0.61, 189.9, 36.91),
        new("F", "Hand", "STYL", "MET3", 0.56, 79.9, 75.34),
        new("M", "Hand", "STYL", "MET3", 0.61, 88.2, 79.48),
        new("F", "Shank", "KJC", "AJC", 4.81, 438.6, 43.52),
        new("M", "Shank", "KJC", "AJC", 4.33, 440.3, 43.95),
        new("F", "Shank", "KJC", "SPHY", 4.81, 426.0, 44.81),
        new("M", "Shank", "KJC", "SPHY", 4.33, 427.7, 45.24),
    ];

    public const double WomanMm = 1735;
    public const double ManMm = 1741;

    public static DeLevaRow Row(string sex, string segment, string from, string to) =>
        Rows.Single(r => r.Sex == sex && r.Segment == segment && r.From == from && r.To == to);
}
