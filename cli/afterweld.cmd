@echo off
rem Starts Afterweld. Builds it once with Maven if its jar is missing; after changing sources run
rem "mvn -pl cli -am package" yourself. Arguments and exit status are passed on.
setlocal EnableExtensions DisableDelayedExpansion
set "aw_here=%~dp0"
set "aw_jar=%aw_here%target\afterweld.jar"
set "aw_archive=%aw_here%target\afterweld.jsa"
set "aw_flags=-Xlog:disable -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xmx256m -Djava.awt.headless=true"

set "aw_java=java"
if defined JAVA_HOME set "aw_java=%JAVA_HOME%\bin\java.exe"
"%aw_java%" --version >nul 2>nul
if errorlevel 1 (
  echo afterweld: Java is missing or too old; install a Java 17 or newer ^(JDK^) or set JAVA_HOME to one>&2
  exit /b 3
)

set "aw_version="
for /f "usebackq tokens=2 delims=. " %%v in (`""%aw_java%" --version"`) do if not defined aw_version set "aw_version=%%v"
if defined aw_version if %aw_version% LSS 17 (
  echo afterweld: Java %aw_version% is too old; install a Java 17 or newer ^(JDK^) or set JAVA_HOME to one>&2
  exit /b 3
)

if exist "%aw_jar%" goto run
where mvn >nul 2>nul
if errorlevel 1 (
  echo afterweld: Maven is missing; install Maven 3.8.1 or newer, the program is built once with it>&2
  exit /b 3
)
echo afterweld: building the program; the first time takes a minute or two>&2
pushd "%aw_here%.."
call mvn -B -q -Dstyle.color=never -pl cli -am package -Dmaven.test.skip=true -Dspotless.check.skip=true 1>&2
set "aw_built=%ERRORLEVEL%"
popd
if not "%aw_built%"=="0" (
  echo afterweld: the build failed; see the messages above>&2
  exit /b 3
)

:run
rem The archive of loaded classes only saves time: made once beside the jar, ignored if it does not fit.
if exist "%aw_archive%" goto start
"%aw_java%" %aw_flags% "-XX:ArchiveClassesAtExit=%aw_archive%" -jar "%aw_jar%" --help >nul 2>nul

:start
set "aw_share="
if exist "%aw_archive%" set aw_share="-XX:SharedArchiveFile=%aw_archive%" -Xshare:auto
"%aw_java%" %aw_flags% %aw_share% -jar "%aw_jar%" %*
exit /b %ERRORLEVEL%
