namespace Slantwise.Records.Scans.Intake;

/// <summary>How long the steps of reading a page took.</summary>
/// <param name="DecodeS">From bytes to a picture in grey.</param>
/// <param name="CodeS">Looking for codes.</param>
/// <param name="ReadS">Finding the form and reading its fields.</param>
public readonly record struct ReadTimes(double DecodeS, double CodeS, double ReadS);
