namespace Batch.Flight.Earth;

/// <summary>The earth's magnetic field at a place and time, and how it changes by the year.</summary>
public readonly record struct MagneticField
{
    /// <summary>Puts the field together from its components.</summary>
    /// <param name="northNt">Component to true north, X [nT].</param>
    /// <param name="eastNt">Component to east, Y [nT].</param>
    /// <param name="downNt">Component down, Z [nT].</param>
    /// <param name="northRateNtPerYear">Yearly change of X [nT/year].</param>
    /// <param name="eastRateNtPerYear">Yearly change of Y [nT/year].</param>
    /// <param name="downRateNtPerYear">Yearly change of Z [nT/year].</param>
    public MagneticField(
        double northNt, double eastNt, double downNt, double northRateNtPerYear, double eastRateNtPerYear, double downRateNtPerYear)
    {
        (NorthNt, EastNt, DownNt) = (northNt, eastNt, downNt);
        (NorthRateNtPerYear, EastRateNtPerYear, DownRateNtPerYear) = (northRateNtPerYear, eastRateNtPerYear, downRateNtPerYear);
    }

    /// <summary>Component to true north, X [nT].</summary>
    public double NorthNt { get; }

    /// <summary>Component to east, Y [nT].</summary>
    public double EastNt { get; }

    /// <summary>Component down, Z [nT].</summary>
    public double DownNt { get; }

    /// <summary>Yearly change of X [nT/year].</summary>
    public double NorthRateNtPerYear { get; }

    /// <summary>Yearly change of Y [nT/year].</summary>
    public double EastRateNtPerYear { get; }

    /// <summary>Yearly change of Z [nT/year].</summary>
    public double DownRateNtPerYear { get; }

    /// <summary>Horizontal intensity, H [nT].</summary>
    public double HorizontalNt => Math.Sqrt(NorthNt * NorthNt + EastNt * EastNt);

    /// <summary>Total intensity, F [nT].</summary>
    public double TotalNt => Math.Sqrt(NorthNt * NorthNt + EastNt * EastNt + DownNt * DownNt);

    /// <summary>Declination, the magnetic variation [deg], -180 to 180, east positive; 0 where there is no horizontal field.</summary>
    public double DeclinationDeg => Angle.Atan2Deg(EastNt, NorthNt);

    /// <summary>Inclination, the dip [deg], -90 to 90, down positive.</summary>
    public double InclinationDeg => Angle.Atan2Deg(DownNt, HorizontalNt);

    /// <summary>Yearly change of the horizontal intensity [nT/year].</summary>
    public double HorizontalRateNtPerYear => (NorthNt * NorthRateNtPerYear + EastNt * EastRateNtPerYear) / HorizontalNt;

    /// <summary>Yearly change of the total intensity [nT/year].</summary>
    public double TotalRateNtPerYear =>
        (NorthNt * NorthRateNtPerYear + EastNt * EastRateNtPerYear + DownNt * DownRateNtPerYear) / TotalNt;

    /// <summary>Yearly change of the declination [deg/year].</summary>
    public double DeclinationRateDegPerYear =>
        (NorthNt * EastRateNtPerYear - EastNt * NorthRateNtPerYear) / (NorthNt * NorthNt + EastNt * EastNt) * Angle.DegreesPerRadian;

    /// <summary>Yearly change of the inclination [deg/year].</summary>
    public double InclinationRateDegPerYear =>
        (HorizontalNt * DownRateNtPerYear - DownNt * HorizontalRateNtPerYear) / (TotalNt * TotalNt) * Angle.DegreesPerRadian;
}
