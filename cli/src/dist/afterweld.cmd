@echo off
rem Starts Afterweld with the Java that lies beside it. Arguments and exit status are passed on.
setlocal EnableExtensions DisableDelayedExpansion
set "aw_flags=-Xlog:disable -XX:+UseSerialGC -Xmx256m -Djava.awt.headless=true"
if /i not "%~1"=="spread" set "aw_flags=%aw_flags% -XX:TieredStopAtLevel=1"
"%~dp0runtime\bin\java.exe" %aw_flags% -jar "%~dp0afterweld.jar" %*
exit /b %ERRORLEVEL%
