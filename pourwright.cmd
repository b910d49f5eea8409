@echo off
rem Builds Pourwright if needed and runs it. pourwright --help says the rest.
setlocal EnableDelayedExpansion
set "here=%~dp0"
set "target=%here%target"
set "jar=%target%\pourwright.jar"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"

"%java%" -version >nul 2>&1
if errorlevel 1 (
  echo pourwright: a JDK 17 or later is needed; install it and run this again. 1>&2
  exit /b 1
)

if not exist "%jar%" (
  where mvn >nul 2>&1
  if errorlevel 1 (
    echo pourwright: Maven 3.8 or later is needed to build; install it and run this again. 1>&2
    exit /b 1
  )
  echo pourwright: building, the first time takes a few minutes ... 1>&2
  pushd "%here%"
  call mvn -q -DskipTests -Dspotless.check.skip=true package 1>&2
  if errorlevel 1 (popd & exit /b 1)
  popd
)

set "flags=-XX:+UseSerialGC -Xss512k -Xshare:auto -XX:LoopUnrollLimit=200 -Djava.awt.headless=true"
set "heap=-Xms64m -Xmn24m -Xmx192m"
if "%~1"=="compute" set "heap=-Xmx1g -XX:TieredStopAtLevel=1"
if "%~1"=="compute" if "%~2"=="burn" set "heap=-Xmx3g"
if "%~1"=="compute" if "%~2"=="melt-front" set "heap=-Xmx3g"
if "%~1"=="bench" set "heap=-Xmx3g"
if "%~1"=="demo" set "heap=-Xmx3g"
if "%~1"=="plan" set "heap=-Xmx3g"
"%java%" %flags% %heap% %POURWRIGHT_JAVA_OPTIONS% -cp "%jar%;%target%\lib\*" pourwright.main.Main %*
exit /b %errorlevel%
