using Slantwise.Engines.Marks;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Paper.Reading;

/// <summary>A picture, or why there is none.</summary>
/// <param name="Grey">The picture, upright.</param>
/// <param name="IsWhole">Whether it has every pixel there is: unpacking it anew gives nothing more.</param>
/// <param name="Problem">Why there is none.</param>
internal sealed record DecodedPicture(GreyImage? Grey, bool IsWhole, ScanRemark? Problem);
